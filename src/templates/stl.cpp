#include "templates/stl.hpp"

#include <Eigen/Geometry>

#include <bit>

namespace rampwright {

namespace {

constexpr std::size_t title_length = 80;

void add_word(std::string& out, std::uint32_t word) {
    for (int shift = 0; shift < 32; shift += 8)
        out += static_cast<char>(word >> shift & 0xFFu);
}

void add_vector(std::string& out, const Eigen::Vector3f& v) {
    for (int i = 0; i < 3; ++i)
        add_word(out, std::bit_cast<std::uint32_t>(v[i]));
}

} // namespace

std::string to_stl(const Mesh& mesh, std::string_view title) {
    // Readers take a file that begins with "solid" for the other form of STL, which is text.
    std::string out = "mm, " + std::string(title);
    out.resize(title_length, ' ');
    add_word(out, static_cast<std::uint32_t>(mesh.triangles.size()));
    for (const auto& [a, b, c] : mesh.triangles) {
        // The normal is that of the rounded corners, which is what a reader compares it with.
        std::array<Eigen::Vector3f, 3> corner;
        for (std::size_t i = 0; const std::uint32_t v : {a, b, c})
            corner[i++] = (1e3 * mesh.vertices[v]).cast<float>();
        const Eigen::Vector3d one = (corner[1] - corner[0]).cast<double>(),
                              other = (corner[2] - corner[0]).cast<double>();
        add_vector(out, one.cross(other).normalized().cast<float>());
        for (const Eigen::Vector3f& each : corner)
            add_vector(out, each);
        out.append(2, '\0');
    }
    return out;
}

} // namespace rampwright

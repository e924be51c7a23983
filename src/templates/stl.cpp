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
        const Eigen::Vector3d &p = mesh.vertices[a], &q = mesh.vertices[b], &r = mesh.vertices[c];
        add_vector(out, (q - p).cross(r - p).normalized().cast<float>());
        for (const Eigen::Vector3d& corner : {p, q, r})
            add_vector(out, (1e3 * corner).cast<float>());
        out.append(2, '\0');
    }
    return out;
}

} // namespace rampwright

#include "shaded/samples.hpp"

#include <rampwright/shaded/render.hpp>

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

/// Towards the light in the viewer's own axes: above the left shoulder.
const Eigen::Vector3f light = Eigen::Vector3f(-0.42f, 0.72f, 0.55f).normalized();
constexpr float from_light = 0.56f, from_everywhere = 0.42f, from_sky = 0.12f;

Projection project(const Viewpoint& from, const RenderSettings& settings, int per_pixel) {
    Projection projection;
    projection.axes.row(0) = from.right().cast<float>();
    projection.axes.row(1) = from.up().cast<float>();
    projection.axes.row(2) = from.towards().cast<float>();
    projection.centre = settings.centre.cast<float>();
    projection.scale = static_cast<float>(settings.pixels_per_metre * per_pixel);
    projection.middle_x = static_cast<float>(settings.width * per_pixel) / 2;
    projection.middle_y = static_cast<float>(settings.height * per_pixel) / 2;
    return projection;
}

float coverage(const std::vector<std::uint8_t>& mask, int size, float u, float v) {
    const int x = std::clamp(static_cast<int>(u * static_cast<float>(size)), 0, size - 1);
    const int y = std::clamp(static_cast<int>(v * static_cast<float>(size)), 0, size - 1);
    return static_cast<float>(mask[static_cast<std::size_t>(y) * static_cast<std::size_t>(size) +
                                   static_cast<std::size_t>(x)]) /
           255.f;
}

/// The body's paint with whatever decal lies there.
Colour with_decals(Colour colour, const Scene& scene, const DecalPicture& picture,
                   const Eigen::Vector3f& place, const Eigen::Vector3f& normal) {
    if (picture.size == 0) return colour;
    const Colour paper(0.95f, 0.95f, 0.92f), ink(0.12f, 0.12f, 0.14f);
    for (const Decal& decal : scene.decals) {
        const Eigen::Vector3f right = decal.right.cast<float>(), up = decal.up.cast<float>();
        const Eigen::Vector3f out = right.cross(up), away = place - decal.centre.cast<float>();
        const auto half = static_cast<float>(decal.half_size);
        const float u = away.dot(right) / half, v = away.dot(up) / half;
        if (std::abs(u) >= 1 || std::abs(v) >= 1 || normal.dot(out) < 0.6f ||
            std::abs(away.dot(out)) > static_cast<float>(decal.depth))
            continue;
        const float on_paper = coverage(picture.paper, picture.size, (1 + u) / 2, (1 - v) / 2);
        const float in_ink = coverage(picture.ink, picture.size, (1 + u) / 2, (1 - v) / 2);
        colour += on_paper * (paper - colour);
        colour += in_ink * (ink - colour);
    }
    return colour;
}

std::uint32_t packed(const Colour& colour, float alpha) {
    const auto byte = [](float value) {
        return static_cast<std::uint32_t>(std::clamp(value, 0.f, 1.f) * 255.f + 0.5f);
    };
    const std::uint32_t a = byte(alpha);
    const auto channel = [&](float value) { return std::min(a, byte(value)); };
    return a << 24 | channel(colour.x()) << 16 | channel(colour.y()) << 8 | channel(colour.z());
}

} // namespace

Vec3 Viewpoint::right() const {
    return {std::sin(turn), std::cos(turn), 0};
}

Vec3 Viewpoint::towards() const {
    return {std::cos(raise) * std::cos(turn), -std::cos(raise) * std::sin(turn), std::sin(raise)};
}

Vec3 Viewpoint::up() const {
    return towards().cross(right());
}

double scale_to_fit(const Scene& scene, double raise, int width, int height) {
    const Vec3 size = scene.high - scene.low;
    const double across = std::hypot(size.x(), size.y());
    const double up = across * std::abs(std::sin(raise)) + size.z() * std::abs(std::cos(raise));
    return 0.94 * std::min(width / across, height / up);
}

Picture render(const Scene& scene, const Viewpoint& from, const RenderSettings& settings) {
    Picture picture{settings.width, settings.height, {}};
    const int n = std::max(1, settings.samples);
    const auto pixels = static_cast<std::size_t>(settings.width) * static_cast<std::size_t>(settings.height);
    picture.pixels.assign(pixels, 0);
    Samples samples{settings.width * n, settings.height * n, {}};
    samples.at.resize(pixels * static_cast<std::size_t>(n * n));
    const Projection projection = project(from, settings, n);
    for (std::size_t i = 0; i < scene.solids.size(); ++i)
        draw(*scene.solids[i].surface, static_cast<std::int16_t>(i), projection, samples);
    // A step of two millimetres, or what a slanting face may rise from one sample to the next.
    const auto edges = find_edges(samples, std::max(2e-3f, 4.f / projection.scale));

    std::vector<float> shadow;
    if (settings.shadow > 0 && from.raise > 0)
        shadow = ground_shadow(scene, project(from, settings, 1), settings.width, settings.height);

    const Eigen::Vector3f lamp = projection.axes.transpose() * light;
    const auto wide = static_cast<std::size_t>(samples.width);
    for (int y = 0; y < settings.height; ++y)
        for (int x = 0; x < settings.width; ++x) {
            Colour sum = Colour::Zero();
            int covered = 0;
            for (int j = 0; j < n; ++j)
                for (int i = 0; i < n; ++i) {
                    const std::size_t at =
                        static_cast<std::size_t>(y * n + j) * wide + static_cast<std::size_t>(x * n + i);
                    const Sample& sample = samples.at[at];
                    if (sample.solid == Sample::nothing) continue;
                    ++covered;
                    const SceneSolid& solid = scene.solids[static_cast<std::size_t>(sample.solid)];
                    const Eigen::Vector3f normal = sample.normal.normalized();
                    Colour colour = solid.colour;
                    if (solid.stuff == Stuff::body && !scene.decals.empty())
                        colour =
                            with_decals(colour, scene, settings.number,
                                        projection.back(static_cast<float>(x * n + i) + 0.5f,
                                                        static_cast<float>(y * n + j) + 0.5f, sample.depth),
                                        normal);
                    colour *= from_everywhere + from_sky * normal.z() +
                              from_light * std::max(0.f, normal.dot(lamp));
                    if (edges[at]) colour += settings.edges * (settings.ink - colour);
                    sum += colour.cwiseMin(1.f);
                }
            const std::size_t at = static_cast<std::size_t>(y) * static_cast<std::size_t>(settings.width) +
                                   static_cast<std::size_t>(x);
            const auto all = static_cast<float>(n * n);
            const float alpha = static_cast<float>(covered) / all;
            const float dark = shadow.empty() ? 0.f : settings.shadow * shadow[at] * (1 - alpha);
            if (alpha + dark > 0) picture.pixels[at] = packed(sum / all, alpha + dark);
        }
    return picture;
}

} // namespace rampwright

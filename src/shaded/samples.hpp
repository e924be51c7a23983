#pragma once

#include <rampwright/shaded/render.hpp>

#include <limits>

namespace rampwright {

/// What lies nearest behind each sample of a picture.
struct Sample {
    static constexpr std::int16_t nothing = -1;
    float depth = -std::numeric_limits<float>::infinity(); ///< towards the viewer, m
    Eigen::Vector3f normal = Eigen::Vector3f::Zero();      ///< car frame
    std::int16_t solid = nothing;
};

/// From the car to the picture's samples.
struct Projection {
    Eigen::Matrix3f axes; ///< rows: right, up, towards
    Eigen::Vector3f centre;
    float scale = 1, middle_x = 0, middle_y = 0; ///< samples a metre; where the centre falls

    /// (sample to the right, sample down, depth)
    Eigen::Vector3f operator()(const Vec3& p) const {
        const Eigen::Vector3f q = axes * (p.cast<float>() - centre);
        return {middle_x + scale * q.x(), middle_y - scale * q.y(), q.z()};
    }
    Eigen::Vector3f back(float x, float y, float depth) const {
        return axes.transpose() * Eigen::Vector3f((x - middle_x) / scale, (middle_y - y) / scale, depth) +
               centre;
    }
};

struct Samples {
    int width = 0, height = 0;
    std::vector<Sample> at;
};

/// Draws a surface, the faces that look towards the viewer.
void draw(const LitSurface& surface, std::int16_t solid, const Projection& projection, Samples& samples);

/// How dark the car's shadow is on the ground straight below it, 0 to 1, by pixel; blurred.
std::vector<float> ground_shadow(const Scene& scene, const Projection& pixels, int width, int height);

/// Which samples lie along an edge: where what is behind them is another solid, much farther away or turned.
std::vector<std::uint8_t> find_edges(const Samples& samples, float step);

} // namespace rampwright

#pragma once

#include <rampwright/shaded/scene.hpp>

#include <cstdint>
#include <vector>

namespace rampwright {

/// Where a picture is taken from: turned about the vertical, then raised. All zero looks along -x, at the
/// car's nose. Parallel projection, as in axonometric drawing.
struct Viewpoint {
    double turn = 0; ///< rad; towards the car's right side: a quarter turn shows that side, nose to the right
    double raise = 0; ///< rad, above the horizon; a quarter turn looks straight down
    Vec3 right() const;
    Vec3 up() const;
    Vec3 towards() const; ///< from the car to the viewer
};

/// The picture that every decal shows: a disc of paper with something in ink on it.
struct DecalPicture {
    int size = 0;
    std::vector<std::uint8_t> paper, ink; ///< coverage, row by row from the top, size x size each
};

/// How a picture is made.
struct RenderSettings {
    int width = 0, height = 0; ///< px
    double pixels_per_metre = 0;
    Vec3 centre = Vec3::Zero();    ///< what is in the middle of the picture
    int samples = 2;               ///< along each side of a pixel
    Colour ink{0.1f, 0.1f, 0.12f}; ///< of edges
    float edges = 0.5f;            ///< how dark they are, 0 to 1
    float shadow = 0.3f;           ///< of the car on the ground, 0 to 1
    DecalPicture number;
};

/// A picture with an alpha channel: 0xAARRGGBB, premultiplied, rows from the top.
struct Picture {
    int width = 0, height = 0;
    std::vector<std::uint32_t> pixels;
};

/// The largest scale (pixels a metre) at which a scene, raised like this, fits a picture however it is
/// turned.
double scale_to_fit(const Scene& scene, double raise, int width, int height);

/// Draws a scene: a z-buffer, Lambert's light from above the viewer's left shoulder with light from the sky,
/// edges in ink where depth or direction jump, a soft shadow on the ground, several samples a pixel.
Picture render(const Scene& scene, const Viewpoint& from, const RenderSettings& settings);

} // namespace rampwright

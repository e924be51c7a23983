#pragma once

#include <rampwright/body/mesh.hpp>
#include <rampwright/car/car_model.hpp>

#include <cstdint>
#include <memory>
#include <string_view>
#include <vector>

/// A car as lit surfaces, and pictures of it drawn by the processor. Lengths in m, car frame.
namespace rampwright {

/// Red, green, blue as a screen has them, 0 to 1.
using Colour = Eigen::Vector3f;

/// Triangles with a normal at each corner: flat where faces meet at an edge, smooth where they go on.
struct LitSurface {
    Mesh mesh;
    std::vector<std::array<Eigen::Vector3f, 3>> normals; ///< by triangle
};

/// @param crease rad: faces that meet at less are one smooth face.
LitSurface light_up(Mesh mesh, double crease);

enum class Stuff { body, wheel, axle, ballast };

struct SceneSolid {
    Stuff stuff = Stuff::body;
    Colour colour = Colour::Ones();
    std::shared_ptr<const LitSurface> surface;
};

/// A flat picture laid on the body from one side, as a decal is: where a surface of the body faces it and
/// lies within `depth` of it.
struct Decal {
    Vec3 centre = Vec3::Zero(), right = Vec3::UnitX(), up = Vec3::UnitZ(); ///< unit vectors in its plane
    double half_size = 0;                                                  ///< of the square it covers
    double depth = 0;
};

struct Scene {
    std::vector<SceneSolid> solids;
    std::vector<Decal> decals; ///< places for the car's number
    Vec3 low = Vec3::Zero(), high = Vec3::Zero();
    double ground = 0; ///< z of the lowest wheel
};

/// The body as the core measures it, the axles' holes included. What `body_facets` needs.
BodyShape finished_body(const CarPlan& plan, const CarModel& car);

/// The whole car: wood, wheels (as far as their section is stated, else the usual one), axles, ballast.
/// @param body lit facets of finished_body, made once as long as the body stays the same.
Scene make_scene(const CarPlan& plan, const CarModel& car, std::shared_ptr<const LitSurface> body);

/// The colour that a child's words for the paint begin with ("reed brown", "grey and white", "dark blue",
/// "#3366cc"); light and dark are heeded. None where no word is a colour: the bare wood then shows.
std::optional<Colour> colour_of(std::string_view paint);

} // namespace rampwright

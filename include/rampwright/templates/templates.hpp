#pragma once

#include <rampwright/templates/line_work.hpp>

#include <string>
#include <string_view>
#include <vector>

/// A car's templates as files for other programs: drawing, solid, list of weights. All are text or bytes to
/// be handed to write_file; numbers never go through the locale.
namespace rampwright {

/// SVG 1.1, user units of 1 mm, to scale: side view, below it the top view (first-angle projection), bores,
/// pockets and axle holes with their names, a bar of 100 mm to check a print by. The groups "side-outline",
/// "top-outline", "side-cuts", "top-cuts", "side-holes", "top-holes" and "check-bar" hold one kind each.
std::string to_svg(const CarPlan& plan, const CarModel& car);

/// DXF R12 (AC1009), ASCII, 1 unit = 1 mm, to scale. Layers SIDE_OUTLINE,
/// SIDE_CUTS, SIDE_HIDDEN, SIDE_HOLES, SIDE_CENTRE, SIDE_NAMES and the same for TOP. The side view stands
/// where the car has it (x, z); the top view is moved down by as much as keeps it clear.
/// Curves are chords within 0.005 mm, which is all that this form can hold.
std::string to_dxf(const CarPlan& plan, const CarModel& car);

/// The weights of a car one by one: a CSV table as RFC 4180 has it, with the columns piece, grams, ounces,
/// running_total_g, running_total_oz; the last row is the whole car. Parts in the order of `car.parts`.
std::string weight_schedule(const CarModel& car);

/// The suffixes that `template_file` knows: ".svg", ".dxf", ".stl", ".csv".
const std::vector<std::string>& template_suffixes();

/// The file of that suffix for a car of a project.
/// @throws Problem (wrong_call) for another suffix; (could_not) where the car cannot be put together or its
///         surface not be closed.
std::string template_file(const Project& project, std::size_t car, std::string_view suffix);

} // namespace rampwright

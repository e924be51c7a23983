#pragma once

#include "car/car_parts.hpp"

/// What a body gains where a tool leaves more than was drawn: volume integrals for each metre.
namespace rampwright {

/// The wood added where a saw leaves the line of one outline outward, on every face it has sawn (those that
/// lie on the block's own faces it has not): to first order the faces themselves, less what cuts have taken
/// from them.
/// @param of_plan the plan's faces, else the profile's.
Moments sawn_layer(const BodyPlan& body, const BodyOutlines& outlines, std::span<const Cut> cuts,
                   bool of_plan);

/// The wood lost where a bore goes deeper than it was drawn: its end where that stands in wood.
/// @param bore its place among `cuts`.
Moments bored_layer(const BodyOutlines& outlines, std::span<const Cut> cuts, std::size_t bore);

/// The same of a pocket: its floor where that stands in wood. The floor is the face across from the one it is
/// cut in from, which is the open one: less than half of it has wood behind it, as where a sloped roof
/// reaches over a part of it, and the face across has more; the upper or lower one before the sides, and
/// those before the ends. A pocket right through, or one that no tool reaches, has none.
/// @param pocket its place among `cuts`.
Moments floor_layer(const BodyOutlines& outlines, std::span<const Cut> cuts, std::size_t pocket);

} // namespace rampwright

#pragma once

#include <rampwright/project/project.hpp>

namespace rampwright {

/// Height of the start line above the finish line, m. @throws Problem as Track does.
double find_drop(const TrackPlan& plan);

/// Makes the lane fall by `drop` between the lines: every slope steeper or shallower in one proportion, the
/// way along the surface as it was. For pieces only. @throws Problem as Track does.
void set_drop(TrackPlan& plan, double drop);

/// Puts the finish line `way` from the start line along the surface, the last straight longer or shorter by
/// the difference, the fall between the lines as it was. For pieces only.
void set_way(TrackPlan& plan, double way);

} // namespace rampwright

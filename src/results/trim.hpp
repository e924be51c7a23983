#pragma once

#include <rampwright/results/built.hpp>

namespace rampwright {

/// The plan's mass (kg), balance point ahead of the rear axle and wheelbase (m), on the level.
struct PlannedStanding {
    double mass = 0, balance = 0, wheelbase = 0;
};

struct TrimPlan {
    std::vector<Trim> trims; ///< in order
    std::string remains;     ///< English: what no trim mends, and what would; empty where nothing is left
    /// English: of each weight that stays where it is though the balance point is off, what holds it back.
    std::vector<std::string> held_back;
};

/// What to do so that the finished car becomes the planned one (compare_built says by which rules).
/// @param found its mass and balance point as found.
TrimPlan plan_trims(const Project& project, const CarModel& car, const PlannedStanding& planned,
                    const Vec2& found, bool mass_known, bool balance_known);

} // namespace rampwright

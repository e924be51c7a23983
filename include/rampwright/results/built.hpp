#pragma once

#include <rampwright/car/car_model.hpp>
#include <rampwright/core/json.hpp>

#include <string>
#include <vector>

namespace rampwright {

/// One quantity of the finished car beside the plan's, SI.
struct BuiltLine {
    std::string code; ///< "mass_g", "front_load_g", "rear_load_g", "balance_ahead_of_rear_axle_mm", ...
    std::string name; ///< English, a few words
    Quantity quantity = Quantity::plain;
    double planned = 0, built = 0;
    double sigma = 0; ///< of the built value: repeat readings and the scale's division
    double difference() const { return built - planned; }
};

/// One thing to do about it.
struct Trim {
    enum class Kind { take_off, add, move };
    Kind kind = Kind::take_off;
    double mass = 0;     ///< kg, what comes off, goes on, or is moved
    double at = 0;       ///< m ahead of the rear axle, level frame: where (before it is moved)
    double by = 0;       ///< m, `move` only: forward where positive
    bool placed = false; ///< whether `at` counts: not where only the whole car was weighed
    std::string piece;   ///< the ballast concerned; empty for wood or any
    /// Of the car once this and what stands before it is done.
    double mass_after = 0, balance_after = 0, front_load_after = 0;
    std::string text; ///< English, in the project's units: "Take 1.4 g of putty off, from the rear."
};

/// The finished car against its plan.
struct Built {
    std::vector<BuiltLine> lines;
    std::vector<Finding> reasons; ///< what the differences most plausibly mean (reconcile_as_built)
    /// Front and rear weighed apart less the whole, kg; how far they should agree is two `closure_sigma`.
    std::optional<double> closure;
    double closure_sigma = 0;
    std::vector<Trim> trims;        ///< in order; none where there is nothing to do
    std::vector<std::string> words; ///< English sentences: each difference, then what to do
};

/// Nothing where nothing was measured on the finished car (`as_built`).
///
/// What to do: the car must read legal, so what is above the middle of the last legal division of the race's
/// scale comes off; what it lacks to the plan's mass goes on. Where it comes off is where that brings the
/// balance point back to the plan's, as far as the car reaches, from putty if there is any; what then remains
/// is mended by moving the heaviest piece that is not locked.
/// @throws Problem where the car cannot stand.
std::optional<Built> compare_built(const Project& project, const CarModel& car);

/// Units in the names, full precision.
Json to_json(const Built& built);

} // namespace rampwright

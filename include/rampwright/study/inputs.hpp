#pragma once

#include <rampwright/study/heat_case.hpp>

#include <functional>
#include <string>
#include <vector>

namespace rampwright {

/// How an uncertain value is spread about its nominal one. Positive quantities are log-normal: they stay
/// positive.
enum class Spread { normal, log_normal };

/// Whether two cars that are compared have the value in common: a lane's and a material's are, a hole's is
/// not.
enum class Scope { shared, own };

/// One value that a prediction rests on and that is not known exactly.
struct Input {
    std::string key;  ///< stable name, e.g. "journal", "mass/ballast/0", "wheelbase"
    double value = 0; ///< nominal, in the unit of `set`
    double sigma = 0; ///< one sigma in the same unit; for log_normal with `factor` see below
    Spread spread = Spread::normal;
    double log_sigma = 0; ///< log_normal: one sigma of the logarithm
    Scope scope = Scope::own;
    std::function<void(HeatCase&, double value)> set;
    bool changes_track = false; ///< a track made for the nominal case does not serve then

    /// The value at z standard deviations from the nominal one (log-normal: the nominal one is the median).
    double at(double z) const;
};

/// Every uncertain value of a case that a heat's time depends on. The clock's own offset and a run's scatter
/// are added after the heat, and are not among them.
/// @param project for what it says of scales, tools and tolerances.
std::vector<Input> list_inputs(const Project& project, const HeatCase& heat_case);

} // namespace rampwright

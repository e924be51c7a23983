#include "car/fit.hpp"

#include <rampwright/core/constants.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

void check_tools(const FitCase& fit, Findings& findings) {
    const std::vector<double>& bits = fit.project.tools.drill_bits;
    if (bits.empty()) return;                  // nobody said which there are
    constexpr double same = 0.02 * millimetre; // inch bits are often named in hundredths of a millimetre
    const auto check = [&](double diameter, const std::string& where, const Vec3& at) {
        const double nearest = *std::min_element(bits.begin(), bits.end(), [&](double a, double b) {
            return std::abs(a - diameter) < std::abs(b - diameter);
        });
        if (std::abs(nearest - diameter) <= same) return;
        findings.push_back(
            make_finding("bit-not-owned", Severity::note, where, at,
                         {{"diameter_mm", diameter / millimetre}, {"nearest_mm", nearest / millimetre}}));
    };
    for (std::size_t i = 0; i < fit.plan.body.cuts.size(); ++i)
        if (const CutPlan& cut = fit.plan.body.cuts[i]; cut.is_bore)
            check(cut.diameter, fit.car.key + "/body/cuts/" + std::to_string(i), (cut.from + cut.to) / 2);
    if (fit.plan.axles.holes != Holes::slots)
        check(fit.plan.axles.hole_diameter, fit.car.key + "/axles/hole_diameter_mm",
              {fit.car.rear_x, 0, fit.car.rear_z});
}

} // namespace rampwright

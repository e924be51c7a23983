#include "car/fit.hpp"

#include <rampwright/core/constants.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

/// What the saw's blade takes away: it cannot saw off less, nor saw a slot narrower than itself.
void check_kerf(const FitCase& fit, Findings& findings) {
    const double kerf = fit.project.tools.saw_kerf;
    const AxlePlan& axles = fit.plan.axles;
    if (axles.holes == Holes::slots && kerf > axles.hole_diameter + least_length)
        findings.push_back(
            make_finding("kerf-over-slot", Severity::warning, fit.car.key + "/axles/hole_diameter_mm",
                         Vec3(fit.car.rear_x, 0, fit.car.rear_z),
                         {{"kerf_mm", kerf / millimetre}, {"slot_mm", axles.hole_diameter / millimetre}}));

    const Interval x = fit.outlines.along(), y = fit.outlines.plan.across(),
                   z = fit.outlines.profile.across();
    const Vec3 low(x.low, y.low, z.low), high(x.high, y.high, z.high), middle = (low + high) / 2;
    const Vec3& block = fit.plan.body.block;
    const Vec3 block_low(0, -block.y() / 2, 0), block_high = block_low + block;
    for (int axis = 0; axis < 3; ++axis)
        for (const bool at_high : {false, true}) {
            const double strip = at_high ? block_high[axis] - high[axis] : low[axis] - block_low[axis];
            if (strip <= least_length || strip >= kerf - least_length) continue;
            Vec3 at = middle;
            at[axis] = at_high ? high[axis] : low[axis];
            findings.push_back(
                make_finding("offcut-under-kerf", Severity::note, fit.car.key + "/body", at,
                             {{"strip_mm", strip / millimetre}, {"kerf_mm", kerf / millimetre}}));
        }
}

void check_bits(const FitCase& fit, Findings& findings) {
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

} // namespace

void check_tools(const FitCase& fit, Findings& findings) {
    check_bits(fit, findings);
    check_kerf(fit, findings);
}

} // namespace rampwright

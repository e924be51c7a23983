#include "car/fit.hpp"

#include <rampwright/body/walls.hpp>
#include <rampwright/car/wood_memo.hpp>
#include <rampwright/core/constants.hpp>

#include <cmath>

namespace rampwright {

void check_walls(const FitCase& fit, Findings& findings) {
    constexpr double least_wall =
        3 * millimetre; // thinner walls of soft wood break in the hand (common practice)
    const std::vector<Wall> all = fit.memo.walls(fit.drilled);
    for (std::size_t i = 0; i < fit.plan.body.cuts.size(); ++i) {
        const Wall& wall = all[i];
        if (wall.beyond == Wall::none || wall.thickness >= least_wall) continue;
        if (wall.beyond >= 0 && wall.beyond < static_cast<int>(i) &&
            all[static_cast<std::size_t>(wall.beyond)].beyond == static_cast<int>(i))
            continue; // said of the cut on its other side
        findings.push_back(
            make_finding("wall-thin", Severity::warning, fit.car.key + "/body/cuts/" + std::to_string(i),
                         (wall.at + wall.to) / 2,
                         {{"wall_mm", wall.thickness / millimetre}, {"least_mm", least_wall / millimetre}}));
    }
}

void check_stance(const FitCase& fit, Findings& findings) {
    const CarOnWheels wheels = on_wheels(fit.car);
    const Standing level = stand(wheels, 0, standard_gravity);
    const Vec3 centre = total(fit.car).centre;
    constexpr double little = 2 * millimetre;
    if (level.tips)
        findings.push_back(make_finding("car-tips", Severity::warning, fit.car.key, centre,
                                        {{"outside_mm", -level.tipping_margin / millimetre}}));
    else if (level.tipping_margin < little)
        findings.push_back(make_finding("tipping-margin-small", Severity::warning, fit.car.key, centre,
                                        {{"margin_mm", level.tipping_margin / millimetre}}));
    for (const Wheel& wheel : fit.car.wheels)
        if (!level.tips && wheel.touches && !level.loads[static_cast<std::size_t>(wheel.corner)])
            findings.push_back(make_finding(
                "wheel-in-the-air", Severity::warning,
                fit.car.key + "/wheels/" + std::to_string(static_cast<int>(wheel.corner)), wheel.centre, {}));
    if (level.idealised)
        findings.push_back(make_finding("loads-idealised", Severity::note, fit.car.key, {}, {}));
    if (fit.car.ground_clearance < 0)
        findings.push_back(make_finding("body-on-track", Severity::warning, fit.car.key, {},
                                        {{"below_mm", -fit.car.ground_clearance / millimetre}}));

    const Wheel& left = fit.car.wheels[static_cast<std::size_t>(Corner::front_left)];
    const Wheel& right = fit.car.wheels[static_cast<std::size_t>(Corner::front_right)];
    if (left.touches == right.touches || !fit.project.track.rail) return;
    // Steer is towards the raised wheel where it has that side's sign: left is positive.
    const Wheel& steered = left.touches ? left : right;
    const double towards_raised = left.touches ? -steered.toe : steered.toe;
    if (towards_raised < -0.01 * degree)
        findings.push_back(make_finding("steer-from-raised-wheel", Severity::warning,
                                        fit.car.key + "/wheels/" +
                                            std::to_string(static_cast<int>(steered.corner)) + "/toe_deg",
                                        steered.centre, {{"steer_deg", -towards_raised / degree}}));
}

std::vector<Finding> check_fit(const Project& project, const CarModel& car) {
    WoodMemo nothing;
    return check_fit(project, car, nothing);
}

std::vector<Finding> check_fit(const Project& project, const CarModel& car, WoodMemo& memo) {
    const CarPlan& plan = project.cars.at(car.car);
    const BodyOutlines outlines(plan.body);
    FitCase fit{project, plan, car, outlines, body_shape(plan, car, outlines), {}, {}, memo};
    fit.drilled = fit.cut = fit.uncut;
    fit.cut.cuts.resize(plan.body.cuts.size());
    fit.uncut.cuts.clear();
    Findings findings;
    check_ballast(fit, findings);
    check_ballast_clearance(fit, findings);
    check_running_gear(fit, findings);
    check_walls(fit, findings);
    check_stance(fit, findings);
    return findings;
}

} // namespace rampwright

#include "car/fit.hpp"

#include <rampwright/core/constants.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

/// An axle that is held over less than this works loose (common practice, no source).
constexpr double least_held = 8 * millimetre;

/// How far a wheel is in the wood: by how much it would have to be narrower on its inner side.
double depth_in_wood(const FitCase& fit, const Wheel& wheel) {
    const auto in_wood = [&](double narrower) {
        Piece piece = piece_of(wheel);
        piece.size.y() -= narrower;
        piece.centre.y() += (is_left(wheel.corner) ? narrower : -narrower) / 2;
        return volume_in_wood(piece, fit.cut) > least_volume;
    };
    if (!in_wood(0)) return 0;
    double low = 0, high = wheel.width * 0.999;
    if (in_wood(high)) return wheel.width;
    for (int i = 0; i < 16; ++i) {
        const double middle = (low + high) / 2;
        (in_wood(middle) ? low : high) = middle;
    }
    return high;
}

void check_wheel(const FitCase& fit, const Wheel& wheel, Findings& findings) {
    // Wood can be in the way only where the plan outline is wider than at the axle.
    const double x = wheel.centre.x(), half = wheel.width / 2;
    const Interval beside = fit.outlines.plan.range_between(x - wheel.radius, x + wheel.radius);
    const double y = wheel.centre.y();
    const bool clear = is_left(wheel.corner) ? beside.high <= y - half : beside.low >= y + half;
    if (clear) return;
    const double depth = depth_in_wood(fit, wheel);
    if (depth > least_length)
        findings.push_back(make_finding("wheel-touches-body", Severity::warning, wheel_key(fit.car, wheel),
                                        wheel.centre, {{"overlap_mm", depth / millimetre}}));
}

void check_axle(const FitCase& fit, const Wheel& wheel, Findings& findings) {
    const AxleShape axle = axle_shape(fit.plan.axles, wheel);
    const double low = std::min(axle.inner.y(), axle.under_head.y());
    const double high = std::max(axle.inner.y(), axle.under_head.y());
    double held = 0;
    for (const WoodStretch& wood : wood_along(fit.outlines, fit.cut.cuts, axle.inner, 1))
        held += std::max(0.0, std::min(wood.range.high, high) - std::max(wood.range.low, low));
    const double number = static_cast<double>(wheel.corner);
    if (held <= least_length)
        findings.push_back(make_finding("axle-misses-wood", Severity::warning, fit.car.key + "/axles",
                                        axle.inner, {{"corner", number}}));
    else if (held < least_held)
        findings.push_back(make_finding("axle-barely-held", Severity::warning, fit.car.key + "/axles",
                                        axle.inner, {{"held_mm", held / millimetre}, {"corner", number}}));
}

/// The axles' holes against the plan's cuts: by cut, then by axle.
void check_holes(const FitCase& fit, Findings& findings) {
    for (std::size_t i = 0; i < fit.plan.body.cuts.size(); ++i) {
        bool hit[2] = {false, false};
        for (const bool front : {false, true}) {
            const Corner corner = front ? Corner::front_left : Corner::rear_left;
            const Vec3& centre = fit.car.wheels[static_cast<std::size_t>(corner)].centre;
            const auto sides = fit.outlines.sides(centre.x());
            const auto open = inside_cut(fit.cut.cuts[i], {centre.x(), 0, centre.z()}, Vec3::UnitY());
            if (!sides || !open) continue;
            const Interval within{std::max(sides->low, open->low), std::min(sides->high, open->high)};
            if (within.length() <= least_length) continue;
            hit[front] = true;
            findings.push_back(make_finding(
                "axle-through-cut", Severity::warning, fit.car.key + "/body/cuts/" + std::to_string(i),
                Vec3(centre.x(), (within.low + within.high) / 2, centre.z()),
                {{"open_mm", within.length() / millimetre}, {"front", front ? 1.0 : 0.0}}));
        }
        if (hit[0] && hit[1])
            findings.push_back(make_finding("axles-through-cut", Severity::warning,
                                            fit.car.key + "/body/cuts/" + std::to_string(i), {}, {}));
    }
}

void check_pairs(const FitCase& fit, Findings& findings) {
    for (const bool front : {false, true}) {
        const Wheel& left =
            fit.car.wheels[static_cast<std::size_t>(front ? Corner::front_left : Corner::rear_left)];
        const Wheel& right =
            fit.car.wheels[static_cast<std::size_t>(front ? Corner::front_right : Corner::rear_right)];
        const AxleShape one = axle_shape(fit.plan.axles, left), other = axle_shape(fit.plan.axles, right);
        const double common = other.inner.y() - one.inner.y();
        if (common > least_length && std::abs(one.inner.z() - other.inner.z()) < one.shank_diameter)
            findings.push_back(make_finding("axles-meet", Severity::warning, fit.car.key + "/axles/length_mm",
                                            (one.inner + other.inner) / 2,
                                            {{"overlap_mm", common / millimetre}}));
        const double difference = 2 * std::abs(left.radius - right.radius);
        if (left.touches && right.touches && difference > 0.1 * millimetre)
            findings.push_back(make_finding("wheels-differ", Severity::warning, fit.car.key + "/wheels",
                                            (left.centre + right.centre) / 2,
                                            {{"difference_mm", difference / millimetre}}));
    }
}

} // namespace

Piece piece_of(const Wheel& wheel) {
    // The library's piece has a cylinder's diameter first, then its length.
    return {Piece::Kind::cylinder, wheel.centre, {2 * wheel.radius, wheel.width, 0}, Vec3::UnitY(), 0};
}

Piece piece_of(const AxleShape& axle) {
    return {Piece::Kind::cylinder,
            (axle.inner + axle.under_head) / 2,
            {axle.shank_diameter, (axle.under_head - axle.inner).norm(), 0},
            Vec3::UnitY(),
            0};
}

void check_running_gear(const FitCase& fit, Findings& findings) {
    for (const Wheel& wheel : fit.car.wheels) {
        check_wheel(fit, wheel, findings);
        check_axle(fit, wheel, findings);
    }
    check_holes(fit, findings);
    check_pairs(fit, findings);
    const double tight = fit.plan.axles.shank_diameter - fit.plan.axles.hole_diameter;
    if (tight > 0.1 * millimetre) // a tenth is a press fit in soft wood
        findings.push_back(make_finding("hole-too-small", Severity::warning,
                                        fit.car.key + "/axles/hole_diameter_mm", {},
                                        {{"tight_mm", tight / millimetre}}));
}

} // namespace rampwright

#include "results/trim_places.hpp"

#include "car/running_surface.hpp"

#include <rampwright/core/constants.hpp>

#include <algorithm>
#include <array>
#include <string_view>

namespace rampwright {

namespace {

/// Less than a scale shows is no room.
constexpr double least_pinch = 0.05 * gram;

/// The body with the plan's cuts alone.
BodyShape cut_body(const CarPlan& plan, const CarModel& car, const BodyOutlines& outlines) {
    BodyShape shape = body_shape(plan, car, outlines);
    shape.cuts.resize(plan.body.cuts.size());
    return shape;
}

/// Where the putty lies that is added to what is in a cut already: the moments' difference.
double place_of_added(const CarPlan& plan, const OpenCut& open, const BodyOutlines& outlines) {
    BallastPlan lying;
    lying.shape = PieceShape::putty;
    lying.mass = 0;
    if (open.putty) lying = plan.ballast[*open.putty];
    const CutPlan& cut = plan.body.cuts[open.cut];
    BallastPlan more = lying;
    more.mass += open.mass;
    const MassProperties after = fill_with_putty(more, cut, outlines).properties;
    if (lying.mass <= 0) return after.centre.x();
    const MassProperties before = fill_with_putty(lying, cut, outlines).properties;
    return (after.mass * after.centre.x() - before.mass * before.centre.x()) / open.mass;
}

} // namespace

bool is_stuck(const CarPlan& plan, const BallastPlan& piece) {
    constexpr std::array<std::string_view, 4> opens{"press-fit", "screw", "putty", "tape"};
    if (piece.fixed) return true;
    if (!piece.held.empty()) return std::find(opens.begin(), opens.end(), piece.held) == opens.end();
    return piece.shape != PieceShape::putty && (is_done(plan, "ballasted") || is_done(plan, "weights fixed"));
}

std::vector<LoosePutty> find_loose_putty(const CarPlan& plan, const CarModel& car) {
    const RunningSurface surface = find_running_surface(car);
    std::vector<LoosePutty> found;
    for (std::size_t i = 0; i < plan.ballast.size(); ++i) {
        const BallastPlan& piece = plan.ballast[i];
        if (piece.shape != PieceShape::putty || is_stuck(plan, piece)) continue;
        for (const Part& part : car.parts)
            if (part.key == car.key + "/ballast/" + std::to_string(i))
                found.push_back({i, part.properties.mass, surface.level(part.properties.centre).x()});
    }
    return found;
}

std::vector<OpenCut> find_open_cuts(const CarPlan& plan, const CarModel& car) {
    const RunningSurface surface = find_running_surface(car);
    const BodyOutlines outlines(plan.body);
    const BodyShape body = cut_body(plan, car, outlines);
    std::vector<OpenCut> found;
    for (std::size_t n = 0; n < plan.body.cuts.size(); ++n) {
        OpenCut open{n, 0, 0, {}};
        for (std::size_t i = 0; i < plan.ballast.size() && !open.putty; ++i)
            if (plan.ballast[i].shape == PieceShape::putty &&
                find_cut(plan.body.cuts, plan.ballast[i].in) == n)
                open.putty = i;
        const std::string material = open.putty ? plan.ballast[*open.putty].material : std::string();
        open.mass = room_in_cut(plan, car, n, body.cuts[n], outlines) * putty_density(material);
        if (open.mass < least_pinch) continue;
        const CutPlan& cut = plan.body.cuts[n];
        const Vec3 at(place_of_added(plan, open, outlines), 0, (cut.from.z() + cut.to.z()) / 2);
        open.ahead = surface.level(at).x();
        found.push_back(open);
    }
    return found;
}

SlideRoom find_slide(const CarPlan& plan, const CarModel& car, std::size_t weight, double wanted) {
    if (is_stuck(plan, plan.ballast[weight])) return {0, SlideRoom::Stop::stuck, 0};
    const BodyOutlines outlines(plan.body);
    return room_to_slide(plan, car, weight, cut_body(plan, car, outlines), outlines, wanted);
}

} // namespace rampwright

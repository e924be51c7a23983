#include <rampwright/track/track.hpp>
#include <rampwright/track/vary.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

void scale_slopes(TrackPlan& plan, double factor) {
    plan.first_slope *= factor;
    for (TrackPiece& piece : plan.pieces)
        if (auto* arc = std::get_if<Arc>(&piece)) {
            arc->turn *= factor;
            arc->radius /= factor; // as long as before
        }
    plan.start_height.reset(); // it was said of another shape
}

} // namespace

double find_drop(const TrackPlan& plan) {
    const Track track(plan);
    return track.point(track.start_line()).at.imag() - track.point(track.finish_line()).at.imag();
}

void set_drop(TrackPlan& plan, double drop) {
    // A fall goes with the sine of the slope, so nearly in proportion to the slope: some rounds.
    for (int round = 0; round < 30; ++round) {
        const double now = find_drop(plan);
        if (!(now > 0) || std::abs(drop - now) < 1e-11) return;
        scale_slopes(plan, drop / now);
    }
}

void set_way(TrackPlan& plan, double way) {
    const double drop = find_drop(plan);
    double longer = way - (plan.finish_line - plan.start_line);
    plan.finish_line += longer;
    // Level runs are what a guess is wrong about: the last straight takes it, or what it can give.
    for (auto piece = plan.pieces.rbegin(); piece != plan.pieces.rend() && longer != 0; ++piece)
        if (auto* straight = std::get_if<Straight>(&*piece)) {
            constexpr double shortest = 0.01;
            const double length = std::max(shortest, straight->length + longer);
            longer -= length - straight->length;
            straight->length = length;
        }
    if (longer > 0) plan.pieces.push_back(Straight{longer});
    plan.start_height.reset();
    set_drop(plan, drop);
}

} // namespace rampwright

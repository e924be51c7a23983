#include "car/room_in_cut.hpp"

#include "car/fit.hpp"

#include <algorithm>
#include <cmath>

namespace rampwright {

double room_in_cut(const CarPlan& plan, const CarModel& car, std::size_t cut, const Cut& cavity,
                   const BodyOutlines& outlines) {
    BallastPlan pinch;
    pinch.shape = PieceShape::putty;
    pinch.mass = 1e-6;
    double room = fill_with_putty(pinch, plan.body.cuts[cut], outlines).capacity;
    for (const BallastPlan& each : plan.ballast) {
        if (find_cut(plan.body.cuts, each.in) != cut) continue;
        if (const auto piece = piece_of(each))
            room -= volume_in_cuts(*piece, std::span(&cavity, 1));
        else
            room -= each.mass / putty_density(each.material);
    }
    for (const Wheel& wheel : car.wheels)
        room -= volume_in_cuts(piece_of(axle_shape(plan.axles, wheel)), std::span(&cavity, 1));
    return room;
}

namespace {

using Stop = SlideRoom::Stop;

/// Something in the way of a weight.
struct Obstacle {
    Piece piece;
    Stop kind = Stop::weight;
    std::size_t index = 0; ///< of a weight, in the plan's ballast
};

std::vector<Obstacle> find_obstacles(const CarPlan& plan, const CarModel& car, std::size_t weight) {
    std::vector<Obstacle> found;
    for (std::size_t i = 0; i < plan.ballast.size(); ++i)
        if (const auto other = piece_of(plan.ballast[i]); other && i != weight)
            found.push_back({*other, Stop::weight, i});
    for (const Wheel& wheel : car.wheels) {
        // The whole bore stays free as far in as the axle goes: it is pushed in and pulled out again.
        AxleShape axle = axle_shape(plan.axles, wheel);
        axle.shank_diameter = std::max(axle.shank_diameter, plan.axles.hole_diameter);
        found.push_back({piece_of(axle), Stop::axle, 0});
        found.push_back({piece_of(wheel), Stop::wheel, 0});
    }
    return found;
}

/// What of a piece lies lower than z.
double volume_lower_than(const Piece& piece, double z) {
    const double reach = piece.size.norm(); // more than enough for any kind
    Piece below;
    below.size = Vec3::Constant(4 * reach + 2 * std::abs(piece.centre.z() - z));
    below.centre = {piece.centre.x(), piece.centre.y(), z - below.size.z() / 2};
    return overlap(piece, below);
}

/// The putty that a weight is bedded in: it rises by what stands in it, and here higher than the weight's
/// underside.
std::optional<std::size_t> find_putty_around(const CarPlan& plan, std::size_t weight,
                                             const BodyOutlines& outlines) {
    const auto cut = find_cut(plan.body.cuts, plan.ballast[weight].in);
    if (!cut) return std::nullopt;
    const double underside = box_around(plan.ballast[weight])->min().z();
    std::optional<std::size_t> putty;
    double volume = 0;
    for (std::size_t i = 0; i < plan.ballast.size(); ++i) {
        const BallastPlan& each = plan.ballast[i];
        if (i == weight || find_cut(plan.body.cuts, each.in) != cut) continue;
        if (const auto piece = piece_of(each)) {
            volume += volume_lower_than(*piece, underside);
        } else if (each.mass > 0) {
            volume += each.mass / putty_density(each.material);
            putty = putty.value_or(i);
        }
    }
    if (!putty) return std::nullopt;
    BallastPlan filling;
    filling.shape = PieceShape::putty;
    filling.mass = volume * putty_density(filling.material);
    const PuttyFill fill = fill_with_putty(filling, plan.body.cuts[*cut], outlines);
    return fill.capacity > 0 && fill.level > underside + least_length ? putty : std::nullopt;
}

/// Asks of places along x whether a weight may be there, and if not why.
class Places {
public:
    Places(const CarPlan& plan, const CarModel& car, std::size_t weight, const Piece& piece,
           const BodyShape& body)
        : piece_(piece),
          body_(body),
          cut_(find_cut(plan.body.cuts, plan.ballast[weight].in)),
          obstacles_(find_obstacles(plan, car, weight)),
          now_(measure(0)) {}

    /// No stop: it fits there.
    SlideRoom look(double by) const {
        const Wrong then = measure(by);
        SlideRoom room{by, Stop::none, 0};
        for (std::size_t i = 0; i < obstacles_.size(); ++i)
            if (then.common[i] > now_.common[i] + least_volume) {
                room.stop = obstacles_[i].kind;
                room.other = obstacles_[i].index;
                return room;
            }
        if (then.out_of_cut > now_.out_of_cut + least_length)
            room.stop = Stop::cut;
        else if (then.wood > now_.wood + least_volume)
            room.stop = Stop::wood;
        else if (then.outside > now_.outside + least_length)
            room.stop = Stop::outside;
        return room;
    }

private:
    /// How much is wrong at a place: lengths for cut and body, volumes for the wood and what is in the way.
    struct Wrong {
        double out_of_cut = 0, wood = 0, outside = 0;
        std::vector<double> common; ///< by obstacle
    };

    Wrong measure(double by) const {
        Piece moved = piece_;
        moved.centre.x() += by;
        Wrong wrong;
        if (cut_)
            wrong.out_of_cut = sticking_out(moved, body_.cuts[*cut_]).depth;
        else
            wrong.wood = volume_in_wood(moved, body_);
        wrong.outside = past_body(moved, body_).depth;
        for (const Obstacle& each : obstacles_) {
            const double reach = moved.size.norm() + each.piece.size.norm();
            const bool near = (moved.centre - each.piece.centre).norm() < reach;
            wrong.common.push_back(near ? overlap(moved, each.piece) : 0);
        }
        return wrong;
    }

    const Piece& piece_;
    const BodyShape& body_;
    std::optional<std::size_t> cut_;
    std::vector<Obstacle> obstacles_;
    Wrong now_;
};

} // namespace

SlideRoom room_to_slide(const CarPlan& plan, const CarModel& car, std::size_t weight, const BodyShape& body,
                        const BodyOutlines& outlines, double wanted) {
    const auto piece = piece_of(plan.ballast[weight]);
    if (!piece || wanted == 0) return {};
    if (const auto putty = find_putty_around(plan, weight, outlines)) return {0, Stop::putty, *putty};
    const Places places(plan, car, weight, *piece, body);
    // Small steps first: a weight does not pass through another.
    const int steps = std::max(1, static_cast<int>(std::ceil(std::abs(wanted) / 2e-3)));
    double low = 0;
    for (int n = 1; n <= steps; ++n) {
        double high = wanted * n / steps;
        SlideRoom stopped = places.look(high);
        if (stopped.stop == Stop::none) {
            low = high;
            continue;
        }
        for (int i = 0; i < 12; ++i) {
            const double middle = (low + high) / 2;
            const SlideRoom there = places.look(middle);
            if (there.stop == Stop::none) {
                low = middle;
            } else {
                high = middle;
                stopped = there; // the first of all that are in the way
            }
        }
        stopped.by = low;
        return stopped;
    }
    return {wanted, Stop::none, 0};
}

} // namespace rampwright

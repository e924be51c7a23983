// Aligning and spacing: the faces of things are known to the geometry of the car, not to the file.
#include "car/car_parts.hpp"
#include "project/group_support.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <algorithm>
#include <array>
#include <cmath>

namespace rampwright {

namespace {

constexpr std::array axis_names{"x", "y", "z"};

/// A thing between its two faces along an axis.
struct Thing {
    bool is_cut = false;
    std::size_t place = 0;
    double low = 0, high = 0;
    bool stays = false;
    double by = 0; ///< the way it is to go
    double middle() const { return (low + high) / 2; }
};

Thing cut_along(const CutPlan& cut, std::size_t place, int axis) {
    // Square to its own direction a bore reaches out by its radius.
    const Vec3 way = cut.to - cut.from;
    const double straight = way.norm() > 0 ? way[axis] / way.norm() : 0;
    const double out = cut.is_bore ? cut.diameter / 2 * std::sqrt(std::max(0.0, 1 - straight * straight)) : 0;
    return {true, place, std::min(cut.from[axis], cut.to[axis]) - out,
            std::max(cut.from[axis], cut.to[axis]) + out};
}

/// What of a group has a place along the axis; putty has none of its own.
std::vector<Thing> things_along(const CarPlan& plan, const Group& group, int axis) {
    std::vector<Thing> things;
    for (const std::size_t piece : group.pieces)
        if (const auto box = box_around(plan.ballast[piece]))
            things.push_back({false, piece, box->min()[axis], box->max()[axis], plan.ballast[piece].fixed});
    for (const std::size_t cut : group.cuts) {
        things.push_back(cut_along(plan.body.cuts[cut], cut, axis));
        things.back().stays = is_done(plan, "drilled");
    }
    return things;
}

Edit shift_along(const Document& document, std::size_t car, const CarPlan& plan,
                 const std::vector<Thing>& things, int axis, std::string name) {
    return make_edit(document, std::move(name), [&](Json& root) {
        const Vec3 along = Vec3::Unit(axis);
        for (const Thing& thing : things) {
            // What stands there already keeps its number to the last digit.
            if (thing.stays || std::abs(thing.by) < 1e-12) continue;
            if (thing.is_cut) {
                Json& row = cut_at(root, car, thing.place);
                const CutPlan& cut = plan.body.cuts[thing.place];
                row["from_mm"] = file_point(Vec3(cut.from + thing.by * along), "from_mm");
                row["to_mm"] = file_point(Vec3(cut.to + thing.by * along), "to_mm");
            } else {
                piece_at(root, car, thing.place)["at_mm"] =
                    file_point(Vec3(plan.ballast[thing.place].at + thing.by * along), "at_mm");
            }
        }
    });
}

[[noreturn]] void refuse(std::size_t car, const std::string& what, const std::string& remedy) {
    throw Problem(Exit::could_not, "/cars/" + std::to_string(car), what, remedy);
}

} // namespace

Edit align_group(const Document& document, std::size_t car, const Group& group, int axis, AlignTo to) {
    const GroupIn found = find_group(document, car, group);
    const CarPlan& plan = found.plan(car);
    refuse_if_all_stay(car, movable(plan, found.group));
    if (to == AlignTo::centre_line) axis = 1;
    std::vector<Thing> things = things_along(plan, found.group, axis);
    if (to != AlignTo::centre_line && things.size() < 2)
        refuse(car, Core::tr("there is nothing to align it to"), Core::tr("choose two things or more"));
    const double low = std::min_element(things.begin(), things.end(), [](const Thing& a, const Thing& b) {
                           return a.low < b.low;
                       })->low;
    const double high = std::max_element(things.begin(), things.end(), [](const Thing& a, const Thing& b) {
                            return a.high < b.high;
                        })->high;
    for (Thing& thing : things)
        thing.by = to == AlignTo::low      ? low - thing.low
                   : to == AlignTo::high   ? high - thing.high
                   : to == AlignTo::middle ? (low + high) / 2 - thing.middle()
                                           : -thing.middle();
    return shift_along(document, car, plan, things, axis,
                       Core::tr("Align {what}", {{"what", words_of(plan, found.group)}}));
}

Edit space_group(const Document& document, std::size_t car, const Group& group, int axis) {
    const GroupIn found = find_group(document, car, group);
    const CarPlan& plan = found.plan(car);
    std::vector<Thing> things = things_along(plan, found.group, axis);
    if (things.size() < 3)
        refuse(car, Core::tr("there is nothing between them to move"),
               Core::tr("choose three things or more"));
    std::stable_sort(things.begin(), things.end(),
                     [](const Thing& a, const Thing& b) { return a.middle() < b.middle(); });
    double gap = things.back().high - things.front().low;
    for (const Thing& thing : things)
        gap -= thing.high - thing.low;
    gap /= static_cast<double>(things.size() - 1);
    double next = things.front().high + gap;
    for (std::size_t i = 1; i + 1 < things.size(); ++i) {
        Thing& thing = things[i];
        if (thing.stays)
            refuse(car, Core::tr("one between the ends is locked, or in wood that is drilled"),
                   Core::tr("unlock it, or leave it out"));
        thing.by = next - thing.low;
        next += thing.high - thing.low + gap;
    }
    return shift_along(
        document, car, plan, things, axis,
        Core::tr("Space {what} along {axis}", {{"what", words_of(plan, found.group)},
                                               {"axis", axis_names.at(static_cast<std::size_t>(axis))}}));
}

} // namespace rampwright

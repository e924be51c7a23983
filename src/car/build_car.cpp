#include "car/car_parts.hpp"
#include "car/running_surface.hpp"

#include <rampwright/car/wood_memo.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/materials/materials.hpp>

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

/// What a mass or a place is uncertain by where nothing better is known: 0.1 g and 0.3 mm, from memory.
constexpr double usual_mass_sigma = 0.1 * gram, usual_place_sigma = 0.3 * millimetre;

/// The body's own words for a place ("cuts/2") as a pointer into the project; holes come after the cuts.
[[noreturn]] void throw_in_car(const Problem& problem, const std::string& key, std::size_t cuts) {
    std::string where = key + "/body/" + problem.where();
    constexpr std::string_view cut = "cuts/";
    if (problem.where().starts_with(cut)) {
        std::size_t index = 0;
        for (const char digit : std::string_view(problem.where()).substr(cut.size())) {
            if (digit < '0' || digit > '9') break;
            index = index * 10 + static_cast<std::size_t>(digit - '0');
        }
        if (index >= cuts) where = key + "/axles/hole_diameter_mm";
    }
    throw Problem(problem.exit(), where, problem.wrong(), problem.remedy(), problem.file());
}

BodyMeasure measure_body(const BodyShape& shape, const std::string& key, std::size_t cuts, WoodMemo& memo) {
    try {
        return memo.measure(shape);
    } catch (const Problem& problem) {
        throw_in_car(problem, key, cuts);
    }
}

/// The body's most forward point: the lowest of those where the shorter of the two outlines ends.
Vec3 find_nose(const BodyOutlines& outlines) {
    const double x = outlines.along().high;
    const double z = outlines.profile.range_between(x, x).low;
    if (std::isfinite(z)) return {x, 0, z};
    const auto section = outlines.profile.section(x);
    return {x, 0, section.empty() ? outlines.profile.across().low : section.front().low};
}

/// Least height of wood and ballast above the running surface.
double find_clearance(const CarPlan& plan, const BodyOutlines& outlines, const RunningSurface& surface) {
    double least = std::numeric_limits<double>::infinity();
    const Interval along = outlines.along();
    for (const Vec2& point : outlines.profile.points())
        if (point.x() >= along.low && point.x() <= along.high)
            least = std::min(least, surface.height({point.x(), 0, point.y()}));
    for (const double x : {along.low, along.high})
        for (const Interval& wood : outlines.profile.section(x))
            least = std::min(least, surface.height({x, 0, wood.low}));
    for (const BallastPlan& piece : plan.ballast)
        if (const auto around = box_around(piece))
            for (const double x : {around->min().x(), around->max().x()})
                least = std::min(least, surface.height({x, 0, around->min().z()}));
    return least;
}

FrontView look_from_the_front(const CarPlan& plan, const CarModel& car, const BodyShape& shape) {
    std::vector<ViewShape> others;
    const auto rectangle = [&](double y1, double y2, double z, double half) {
        others.emplace_back(ViewRectangle{{std::min(y1, y2), z - half}, {std::max(y1, y2), z + half}});
    };
    for (const Wheel& wheel : car.wheels) {
        const double y = wheel.centre.y(), z = wheel.centre.z();
        rectangle(y - wheel.width / 2, y + wheel.width / 2, z, wheel.radius);
        const AxleShape axle = axle_shape(plan.axles, wheel);
        rectangle(axle.inner.y(), axle.under_head.y(), z, axle.shank_diameter / 2);
        rectangle(axle.under_head.y(), axle.head_end.y(), z, axle.head_diameter / 2);
    }
    for (const BallastPlan& piece : plan.ballast)
        if (const auto view = front_of(piece)) others.push_back(*view);
    return measure_front_view(shape, others);
}

Eigen::AlignedBox3d box_around_car(const CarPlan& plan, const CarModel& car, const BodyOutlines& outlines) {
    const Interval x = outlines.along(), y = outlines.plan.across(), z = outlines.profile.across();
    Eigen::AlignedBox3d around(Vec3(x.low, y.low, z.low), Vec3(x.high, y.high, z.high));
    for (const Wheel& wheel : car.wheels) {
        const Vec3 half(wheel.radius, wheel.width / 2, wheel.radius);
        around.extend(Eigen::AlignedBox3d(wheel.centre - half, wheel.centre + half));
    }
    for (const BallastPlan& piece : plan.ballast)
        if (const auto box = box_around(piece)) around.extend(*box);
    return around;
}

/// Glue, screws and plugs, each as a point in the middle of the weight it holds. What they weigh is told by
/// the scale before and after, or else is what is typical.
void add_holdings(const Project& project, const CarPlan& plan, CarModel& car) {
    const double weighed_sigma = project.scale.division / std::sqrt(6.0); // a difference of two readings
    for (std::size_t i = 0; i < plan.ballast.size(); ++i) {
        const BallastPlan& piece = plan.ballast[i];
        const Holding* holding = find_holding(piece.held);
        const Uncertain mass = piece.held_mass      ? Uncertain{*piece.held_mass, weighed_sigma}
                               : holding != nullptr ? holding->mass
                                                    : Uncertain{};
        if (!(mass.value > 0)) continue;
        const std::string place = "/ballast/" + std::to_string(i);
        const auto held = std::find_if(car.parts.begin(), car.parts.end(),
                                       [&](const Part& part) { return part.key == car.key + place; });
        car.parts.push_back(
            {PartKind::holding,
             car.key + place + "/held",
             Core::tr("{holding} for {piece}",
                      {{"holding", holding != nullptr ? Core::tr(holding->name) : Core::tr("what holds it")},
                       {"piece", piece.name}}),
             {},
             {mass.value, held->properties.centre, Eigen::Matrix3d::Zero()},
             mass.sigma,
             usual_place_sigma});
    }
}

/// A piece that still has the typical mass of its kind was not weighed: it may be off by as much as the kind
/// varies.
double ballast_mass_sigma(const BallastPlan& piece) {
    for (const HouseholdPiece& typical : household_pieces())
        if (piece.name == typical.name && std::abs(piece.mass - typical.mass.value) < 1e-9)
            return typical.mass.sigma;
    return usual_mass_sigma;
}

void add_parts(const Project& project, const CarPlan& plan, const BodyOutlines& outlines, CarModel& car) {
    const auto add = [&car](PartKind kind, std::string key, std::string name, std::optional<Corner> corner,
                            const MassProperties& properties) {
        car.parts.push_back(
            {kind, std::move(key), std::move(name), corner, properties, usual_mass_sigma, usual_place_sigma});
    };
    if (plan.body.finish > 0)
        add(PartKind::finish, car.key + "/body/finish_g", Core::tr("finish"), {},
            finish_properties(plan.body.finish, outlines));
    for (const Wheel& wheel : car.wheels)
        add(PartKind::axle, car.key + "/axles",
            Core::tr("axle {corner}", {{"corner", in_words(wheel.corner)}}), wheel.corner,
            axle_properties(plan.axles, axle_shape(plan.axles, wheel)));
    for (const Wheel& wheel : car.wheels)
        add(PartKind::wheel, wheel_key(car, wheel),
            Core::tr("wheel {corner}", {{"corner", in_words(wheel.corner)}}), wheel.corner,
            wheel_properties(wheel));
    for (std::size_t i = 0; i < plan.ballast.size(); ++i) {
        const BallastPlan& piece = plan.ballast[i];
        add(PartKind::ballast, car.key + "/ballast/" + std::to_string(i), piece.name, {},
            ballast_properties(piece, plan.body.cuts, outlines));
        car.parts.back().mass_sigma = ballast_mass_sigma(piece);
    }
    add_holdings(project, plan, car);
}

} // namespace

CarModel build_car(const Project& project, std::size_t index) {
    WoodMemo nothing;
    return build_car(project, index, nothing);
}

CarModel build_car(const Project& project, std::size_t index, WoodMemo& memo) {
    const CarPlan& plan = project.cars.at(index);
    CarModel car;
    car.car = index;
    car.key = "/cars/" + std::to_string(index);
    car.rear_x = plan.axles.rear_x;
    car.front_x = plan.axles.front_x;
    car.rear_z = plan.axles.rear_z;
    car.front_z = plan.axles.front_z;
    car.model = plan.model;
    car.as_built = plan.as_built;
    car.steer = plan.steer;
    car.drag_coefficient = plan.drag.coefficient;

    const BodyOutlines outlines(plan.body);
    for (std::size_t i = 0; i < car.wheels.size(); ++i)
        car.wheels[i] = make_wheel(plan.wheels[i]);
    place_wheels(plan, outlines, car);

    const BodyShape shape = body_shape(plan, car, outlines);
    const BodyMeasure body = measure_body(shape, car.key, plan.body.cuts.size(), memo);
    car.wood_volume = body.wood.volume;
    car.body_mass = plan.body.density * body.wood.volume;
    // A weighed block is known to the scale's division; any other board varies as its kind does.
    const double wood_sigma =
        plan.body.block_mass
            ? project.scale.division / std::sqrt(12.0) * car.body_mass / *plan.body.block_mass
            : std::max(plan.body.density_sigma * body.wood.volume, usual_mass_sigma);
    car.parts.push_back({PartKind::body, car.key + "/body", Core::tr("wood"), std::nullopt,
                         with_density(body.wood, plan.body.density), wood_sigma, usual_place_sigma});
    add_parts(project, plan, outlines, car);

    const RunningSurface surface = find_running_surface(car);
    car.nose = find_nose(outlines);
    const Eigen::AlignedBox3d around = box_around_car(plan, car, outlines);
    car.low = around.min();
    car.high = around.max();
    car.ground_clearance = find_clearance(plan, outlines, surface);
    const FrontView view = look_from_the_front(plan, car, shape);
    car.frontal_area = plan.drag.frontal_area.value_or(view.area);
    car.drag_height =
        plan.drag.height.value_or(surface.height({(car.rear_x + car.front_x) / 2, 0, view.height}));
    return car;
}

} // namespace rampwright

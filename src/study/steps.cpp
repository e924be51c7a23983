#include "core/fill_text.hpp"
#include "study/changes.hpp"

#include <rampwright/bench/scale.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/study/inputs.hpp>
#include <rampwright/study/steps.hpp>

#include <algorithm>
#include <cmath>
#include <functional>

namespace rampwright {

namespace {

// How far each step goes: what a careful evening brings. Common practice, no source.
constexpr double polish_leaves = 0.7;           ///< of the friction
constexpr double jig_leaves = 0.5;              ///< of what the holes leave, at best a jig's own
constexpr double jig_align = 0.2;               ///< degrees
constexpr double lighter_by = 0.5 * gram;       ///< each wheel
constexpr double lightest_wheel = 1 * gram;     ///< below that it is no longer a wheel
constexpr double raise_by = 1.5 * millimetre;   ///< a front wheel
constexpr double usual_cant = 3 * degree;       ///< rear wheels
constexpr double back_by = 5 * millimetre;      ///< weight
constexpr double slimmer_leaves = 0.9;          ///< of the frontal area
constexpr double cone_width = 0.4 * millimetre; ///< of the ring a coned hub rubs with
constexpr double cone_body = 1.5;               ///< outer radius on the wood's side, in bore radii
constexpr double kept_below_limit = 0.1 * gram; ///< never to the very bound of a scale
constexpr double least_margin = 1;              ///< of guidance, that a step may leave

/// A step as a change of any case of the car: the nominal one, or one whose inputs are varied.
struct Candidate {
    const char* key;
    Effort effort;
    std::vector<std::pair<std::string, double>> values;
    std::function<void(HeatCase&)> take;
};

/// What candidates are made from.
struct Bench {
    const Project& project;
    const HeatCase& nominal;
    const ReadyHeat& ready;
    std::vector<Candidate> list;

    bool allowed(const char* what) const {
        const auto found = project.rules.allow.find(what);
        return found == project.rules.allow.end() || found->second;
    }
    const Wheel& wheel(Corner corner) const { return nominal.car.wheels[std::size_t(corner)]; }
};

void add_friction_steps(Bench& bench) {
    const double friction = bench.nominal.car.model[ModelName::journal].value;
    bench.list.push_back({"polish-axles",
                          Effort::some,
                          {{"from", friction}, {"to", polish_leaves * friction}},
                          [](HeatCase& c) { c.car.model[ModelName::journal].value *= polish_leaves; }});
    const bool coned = std::all_of(bench.nominal.car.wheels.begin(), bench.nominal.car.wheels.end(),
                                   [](const Wheel& w) { return w.hub == Hub::coned; });
    if (!coned && bench.allowed("coned_hubs"))
        bench.list.push_back(
            {"cone-hubs", Effort::some, {}, [](HeatCase& c) {
                 for (Wheel& w : c.car.wheels) {
                     if (w.hub == Hub::coned) continue;
                     w.hub = Hub::coned;
                     const double head = std::min(w.hub_ring.y(), w.bore_radius + cone_width);
                     w.hub_ring = {w.bore_radius, head};
                     w.body_ring = {w.bore_radius, std::min(w.body_ring.y(), cone_body * w.bore_radius)};
                 }
             }});
    const double align = bench.nominal.car.model[ModelName::align_deg].value;
    if (align > 1.2 * jig_align)
        bench.list.push_back({"jig-holes",
                              Effort::much,
                              {{"from_deg", align}, {"to_deg", std::max(jig_align, jig_leaves * align)}},
                              [](HeatCase& c) {
                                  double& left = c.car.model[ModelName::align_deg].value;
                                  left = std::max(jig_leaves * left, std::min(left, jig_align));
                              }});
}

void add_wheel_steps(Bench& bench) {
    double lightest = bench.nominal.car.wheels[0].mass;
    for (const Wheel& wheel : bench.nominal.car.wheels)
        lightest = std::min(lightest, wheel.mass);
    const double floor = std::max(lightest_wheel, bench.project.rules.wheel_min_mass.value_or(0));
    const double each = std::min(lighter_by, lightest - floor);
    if (each > 0.05 * gram)
        bench.list.push_back({"lighter-wheels", Effort::much, {{"each_g", each / gram}}, [each](HeatCase& c) {
                                  add_wheel_mass(c, -each);
                                  // The car weighs what it weighed: the weight goes to the balance point.
                                  if (!c.car.as_built.mass) add_mass(c, 4 * each);
                              }});
    const Wheel &left = bench.wheel(Corner::front_left), &right = bench.wheel(Corner::front_right);
    const bool three_enough = bench.project.rules.wheels_touching.value_or(3) < 4;
    if (left.touches && right.touches && three_enough && bench.allowed("raised_wheel")) {
        // Towards the raised wheel's side it may steer: so the one on the side it steers to.
        const Corner raised = right.toe < 0 ? Corner::front_right : Corner::front_left;
        bench.list.push_back({"raise-front-wheel",
                              Effort::some,
                              {{"raised_mm", raise_by / millimetre}},
                              [raised](HeatCase& c) {
                                  Wheel& wheel = c.car.wheels[std::size_t(raised)];
                                  wheel.touches = false;
                                  wheel.raised = raise_by;
                                  wheel.centre.z() += raise_by;
                              }});
    }
}

double rear_cant(const HeatCase& c) {
    return 0.5 * (c.car.wheels[0].cant + c.car.wheels[1].cant);
}

void add_aim_steps(Bench& bench, const SteerFigures& steer) {
    const double cant = rear_cant(bench.nominal);
    const auto set_cant = [](double to) {
        return [to](HeatCase& c) { cant_axle(c, false, to - rear_cant(c)); };
    };
    if (cant < 0.8 * usual_cant && bench.allowed("bent_axles"))
        bench.list.push_back({"cant-rear",
                              Effort::some,
                              {{"from_deg", cant / degree}, {"to_deg", usual_cant / degree}},
                              set_cant(usual_cant)});
    if (cant > 0.5 * degree)
        bench.list.push_back({"level-rear", Effort::some, {{"from_deg", cant / degree}}, set_cant(0)});
    if (!steer.best_toe || std::abs(*steer.best_toe - steer.toe) < 0.05 * degree) return;
    const double best = *steer.best_toe;
    bench.list.push_back({"set-steer",
                          Effort::small,
                          {{"from_deg", steer.toe / degree}, {"to_deg", best / degree}},
                          [best](HeatCase& c) {
                              for (Wheel& w : c.car.wheels)
                                  if (is_front(w.corner) && w.touches) w.toe = best;
                          }});
}

void add_weight_steps(Bench& bench) {
    const CarOnWheels& wheels = bench.ready.wheels;
    if (bench.project.rules.max_mass) {
        const double margin =
            weigh(bench.project.scale, wheels.mass, *bench.project.rules.max_mass).margin - kept_below_limit;
        if (margin > 0.2 * gram)
            bench.list.push_back(
                {"fill-to-limit", Effort::small, {{"add_g", margin / gram}}, [margin](HeatCase& c) {
                     add_mass(c, margin);
                 }});
    }
    // As far back as leaves the front heavy enough to guide, and on the track.
    for (double back = back_by; back > 0.9 * millimetre; back -= 1 * millimetre) {
        HeatCase moved = bench.nominal;
        move_balance(moved, -back);
        const ReadyHeat ready = make_ready(moved, bench.ready.track);
        const bool guides = !moved.track.rail || ready.guide.margin >= least_margin;
        if (!guides || ready.level.front <= 0) continue;
        const HeatResult heat = run_heat(ready.course, ready.car);
        if (heat.lifted_front || !heat.finished) continue;
        const double gravity = bench.ready.track->gravity();
        bench.list.push_back({"weight-rearward",
                              Effort::small,
                              {{"back_mm", back / millimetre},
                               {"from_g", bench.ready.level.front / gravity / gram},
                               {"to_g", ready.level.front / gravity / gram}},
                              [back](HeatCase& c) { move_balance(c, -back); }});
        return;
    }
}

std::optional<double> time_of(const HeatCase& heat_case, const std::shared_ptr<const Track>& track) {
    try {
        return clock_time(heat_case, track);
    } catch (const Problem&) {
        return std::nullopt; // such a car cannot stand
    }
}

} // namespace

std::vector<BuilderStep> find_steps(const Project& project, std::size_t car) {
    const HeatCase nominal = make_case(project, car);
    const ReadyHeat ready = make_ready(nominal);
    const std::optional<double> base = time_of(nominal, ready.track);
    std::vector<BuilderStep> steps;
    if (!base) return steps;
    Bench bench{project, nominal, ready, {}};
    add_friction_steps(bench);
    add_wheel_steps(bench);
    add_aim_steps(bench, compute_figures(project, car).steer);
    bench.list.push_back(
        {"slimmer-body", Effort::much, {{"less_pct", 100 * (1 - slimmer_leaves)}}, [](HeatCase& c) {
             c.car.frontal_area *= slimmer_leaves;
         }});
    add_weight_steps(bench);

    std::vector<double> variance(bench.list.size(), 0);
    std::vector<std::optional<double>> gains;
    for (const Candidate& candidate : bench.list) {
        HeatCase taken = nominal;
        candidate.take(taken);
        const std::optional<double> time = time_of(taken, ready.track);
        gains.push_back(time ? std::optional(*base - *time) : std::nullopt);
    }
    for (const Input& input : list_inputs(project, nominal)) {
        const std::shared_ptr<const Track> track = input.changes_track ? nullptr : ready.track;
        const auto varied = [&](double z, const Candidate* candidate) {
            HeatCase c = nominal;
            input.set(c, input.at(z));
            if (candidate) candidate->take(c);
            return time_of(c, track);
        };
        const std::optional<double> high = varied(1, nullptr), low = varied(-1, nullptr);
        if (!high || !low) continue;
        for (std::size_t n = 0; n < bench.list.size(); ++n) {
            const auto with_high = varied(1, &bench.list[n]), with_low = varied(-1, &bench.list[n]);
            if (!with_high || !with_low) continue;
            const double half = 0.5 * ((*high - *with_high) - (*low - *with_low));
            variance[n] += half * half;
        }
    }
    for (std::size_t n = 0; n < bench.list.size(); ++n) {
        if (!gains[n]) continue;
        Candidate& candidate = bench.list[n];
        const std::string text =
            fill_text(Core::tr(find_step_text(candidate.key)), candidate.values, UnitSystem::metric);
        steps.push_back({candidate.key, candidate.effort, *gains[n], std::sqrt(variance[n]),
                         std::move(candidate.values), text});
    }
    std::stable_sort(steps.begin(), steps.end(),
                     [](const BuilderStep& a, const BuilderStep& b) { return a.gain > b.gain; });
    return steps;
}

double runs_to_settle(double gap, double scatter) {
    constexpr double confidence = 1.959963984540054, power = 0.8416212335729143;
    const double ratio = (confidence + power) * scatter / gap;
    return std::ceil(2 * ratio * ratio);
}

} // namespace rampwright

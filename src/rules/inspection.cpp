#include "car/car_parts.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/materials/materials.hpp>
#include <rampwright/rules/inspection.hpp>
#include <rampwright/rules/rule_kinds.hpp>
#include <rampwright/units/format.hpp>

#include <algorithm>
#include <array>
#include <cmath>

namespace rampwright {

namespace {

/// A limit is met at equality; sums of decimal lengths and masses carry rounding of this size, SI.
constexpr double rounding = 1e-12;

/// What a calliper at the inspection table can be off by (common practice, no source).
constexpr double calliper = 0.05 * millimetre;

/// Over the outermost axle heads, wheels and wood.
double overall_width(const AxlePlan& axles, const CarModel& car) {
    double left = car.high.y(), right = car.low.y();
    for (const Wheel& wheel : car.wheels) {
        const double end = axle_shape(axles, wheel).head_end.y();
        left = std::max(left, end);
        right = std::min(right, end);
    }
    return left - right;
}

double inner_width(const CarModel& car, bool front) {
    const Wheel& left = car.wheels[std::size_t(front ? Corner::front_left : Corner::rear_left)];
    const Wheel& right = car.wheels[std::size_t(front ? Corner::front_right : Corner::rear_right)];
    return left.centre.y() - right.centre.y() - 0.5 * (left.width + right.width);
}

double least(const CarModel& car, double Wheel::*member) {
    return (*std::min_element(car.wheels.begin(), car.wheels.end(),
                              [member](const Wheel& a, const Wheel& b) { return a.*member < b.*member; })).*
           member;
}

double greatest(const CarModel& car, double Wheel::*member) {
    return (*std::max_element(car.wheels.begin(), car.wheels.end(),
                              [member](const Wheel& a, const Wheel& b) { return a.*member < b.*member; })).*
           member;
}

/// The corners for which something holds, in words: "rear left, front right"; empty for none.
template <class Holds>
std::string corners_where(const CarModel& car, Holds holds) {
    std::string list;
    for (const Wheel& wheel : car.wheels) {
        if (!holds(wheel)) continue;
        list += (list.empty() ? "" : ", ") + in_words(wheel.corner);
    }
    return list;
}

/// What the car has of a thing that a rule may forbid: where, in words (empty: nowhere), or nothing where no
/// figure tells.
using Use = std::optional<std::string>;

Use use_of_bent_axles(const CarModel& car) {
    if (car.steer.bend) return *car.steer.bend != 0 ? Core::tr("bent") : "";
    const bool slanted = std::any_of(car.wheels.begin(), car.wheels.end(),
                                     [](const Wheel& wheel) { return wheel.cant != 0 || wheel.toe != 0; });
    return slanted ? Use{} : Use{""};
}

Use use_of_lead(const CarPlan& plan) {
    std::string list;
    bool unknown = false;
    for (const BallastPlan& piece : plan.ballast) {
        const Material* material = find_material(piece.material);
        if (material == nullptr)
            unknown = true;
        else if (std::find(material->cautions.begin(), material->cautions.end(), "lead") !=
                 material->cautions.end())
            list += (list.empty() ? "" : ", ") + piece.name;
    }
    return list.empty() && unknown ? Use{} : Use{list};
}

/// Where the car uses what the rule `allow/NAME` is about.
Use find_use(const std::string& name, const CarPlan& plan, const CarModel& car) {
    if (name == "raised_wheel") return corners_where(car, [](const Wheel& wheel) { return !wheel.touches; });
    if (name == "canted_wheels")
        return corners_where(car, [](const Wheel& wheel) { return wheel.cant != 0; });
    if (name == "steered_wheels")
        return corners_where(car, [](const Wheel& wheel) { return wheel.toe != 0; });
    if (name == "coned_hubs")
        return corners_where(car, [](const Wheel& wheel) { return wheel.hub == Hub::coned; });
    if (name == "bent_axles") return use_of_bent_axles(car);
    if (name == "lead") return use_of_lead(plan);
    return {};
}

std::string joined(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words)
        text += (text.empty() ? "" : ", ") + word;
    return text;
}

/// Makes the list, rule by rule, in the order of the kinds.
class Inspector {
public:
    Inspector(const Project& project, const CarModel& car, const Figures& figures)
        : project_(project),
          rules_(project.rules),
          plan_(project.cars.at(car.car)),
          car_(car),
          figures_(figures) {}

    std::vector<InspectionRow> inspect() {
        const double saw = project_.tools.saw_tolerance, drill = project_.tools.drill_tolerance;
        const Vec3 size = car_.high - car_.low;
        const double wheelbase = car_.front_x - car_.rear_x;
        const std::vector<Wheel> touching = [&] {
            std::vector<Wheel> list;
            std::copy_if(car_.wheels.begin(), car_.wheels.end(), std::back_inserter(list),
                         [](const Wheel& wheel) { return wheel.touches; });
            return list;
        }();
        mass();
        at_most("max_length_mm", rules_.max_length, size.x(), saw);
        at_most("max_width_mm", rules_.max_width, overall_width(plan_.axles, car_), saw);
        at_most("max_height_mm", rules_.max_height, size.z(), saw);
        at_least("min_ground_clearance_mm", rules_.min_ground_clearance, car_.ground_clearance, saw);
        at_least("min_inner_width_mm", rules_.min_inner_width,
                 std::min(inner_width(car_, false), inner_width(car_, true)), saw);
        at_least("wheelbase_mm/min", rules_.wheelbase.min, wheelbase, drill);
        at_most("wheelbase_mm/max", rules_.wheelbase.max, wheelbase, drill);
        at_least("wheel_min_mass_g", rules_.wheel_min_mass, least(car_, &Wheel::mass),
                 project_.scale.division, Quantity::mass);
        at_least("wheel_diameter_mm/min", rules_.wheel_diameter.min, 2 * least(car_, &Wheel::radius),
                 calliper);
        at_most("wheel_diameter_mm/max", rules_.wheel_diameter.max, 2 * greatest(car_, &Wheel::radius),
                calliper);
        at_least("wheel_min_width_mm", rules_.wheel_min_width, least(car_, &Wheel::width), calliper);
        // So many wheels must touch, at least: more never break the rule, and a count has no tolerance.
        if (rules_.wheels_touching)
            decide("wheels_touching", Bound::at_least, Quantity::plain, *rules_.wheels_touching,
                   double(touching.size()), 0);
        if (rules_.max_nose_height)
            at_most("max_nose_height_mm", rules_.max_nose_height, on_wheels(car_).nose.y(), saw);
        build_date();
        lubricants();
        for (const RuleKind& kind : rule_kinds())
            if (kind.id.starts_with("allow/"))
                if (const auto found = rules_.allow.find(kind.id.substr(6)); found != rules_.allow.end())
                    allowance(found->first, found->second, &kind);
        for (const auto& [name, allowed] : rules_.allow)
            if (find_rule_kind("allow/" + name) == nullptr) allowance(name, allowed, nullptr);
        house();
        others();
        return std::move(rows_);
    }

private:
    /// A row with the words of its kind, or the file's own where it has some.
    InspectionRow& row(const std::string& code) {
        InspectionRow row;
        row.code = code;
        if (const RuleKind* kind = find_rule_kind(code)) {
            row.name = Core::tr(kind->name);
            row.rule = Core::tr(kind->text);
            row.inspect = Core::tr(kind->inspect);
            row.why = Core::tr(kind->why);
        }
        row.source = rules_.source;
        if (const auto found = rules_.words.find(code); found != rules_.words.end()) {
            const RuleWords& words = found->second;
            if (!words.text.empty()) row.rule = words.text;
            if (!words.inspect.empty()) row.inspect = words.inspect;
            if (!words.source.empty()) row.source = words.source;
        }
        rows_.push_back(std::move(row));
        return rows_.back();
    }

    void decide(const char* code, Bound bound, Quantity quantity, double limit, double value,
                double tolerance) {
        InspectionRow& r = row(code);
        r.bound = bound;
        r.quantity = quantity;
        r.limit = limit;
        r.value = value;
        r.margin = bound == Bound::at_most ? limit - value : value - limit;
        r.why.clear();
        if (*r.margin < -rounding) {
            r.verdict = Verdict::breach;
        } else if (quantity != Quantity::plain &&
                   (*r.margin <= rounding || *r.margin < tolerance - rounding)) {
            r.verdict = Verdict::margin;
            r.why = *r.margin <= rounding
                        ? Core::tr("exactly at the limit")
                        : Core::tr("less room than the {tolerance} that tools and gauges can be off by",
                                   {{"tolerance", format(tolerance, quantity, project_.units,
                                                         {.significant = 2, .trim = true})}});
        } else {
            r.verdict = Verdict::pass;
        }
    }
    void at_most(const char* code, const std::optional<double>& limit, double value, double tolerance) {
        if (limit) decide(code, Bound::at_most, Quantity::length, *limit, value, tolerance);
    }
    void at_least(const char* code, const std::optional<double>& limit, double value, double tolerance,
                  Quantity quantity = Quantity::length) {
        if (limit) decide(code, Bound::at_least, quantity, *limit, value, tolerance);
    }

    /// As the scales show it: legal by the race's own, narrowly where the worse one would find it too heavy.
    void mass() {
        if (!figures_.scale) return;
        const ScaleFigures& scale = *figures_.scale;
        InspectionRow& r = row("max_mass_g");
        r.bound = Bound::at_most;
        r.quantity = Quantity::mass;
        r.limit = rules_.max_mass;
        r.value = scale.reads;
        r.margin = scale.margin;
        r.verdict = scale.margin <= 0         ? Verdict::breach
                    : scale.worse_margin <= 0 ? Verdict::margin
                                              : Verdict::pass;
        if (r.verdict == Verdict::margin)
            r.why = Core::tr("a worse scale would read {mass}",
                             {{"mass", format(scale.worse_reads, Quantity::mass, project_.units)}});
    }

    void build_date() {
        if (rules_.built_after.empty()) return;
        InspectionRow& r = row("built_after");
        r.limit_words = Core::tr("on {day} or later", {{"day", rules_.built_after}});
        if (plan_.built_on.empty()) return;
        r.value_words = plan_.built_on;
        r.why.clear();
        // Days as YYYY-MM-DD sort as texts.
        r.verdict = plan_.built_on >= rules_.built_after ? Verdict::pass : Verdict::breach;
    }

    void lubricants() {
        if (!rules_.lubricants) return;
        InspectionRow& r = row("lubricants");
        r.limit_words = rules_.lubricants->empty() ? Core::tr("none") : joined(*rules_.lubricants);
    }

    void allowance(const std::string& name, bool allowed, const RuleKind* kind) {
        InspectionRow& r = row("allow/" + name);
        r.bound = Bound::allowed;
        r.limit_words = allowed ? Core::tr("allowed") : Core::tr("not allowed");
        if (kind == nullptr) {
            r.name = name;
            std::replace(r.name.begin(), r.name.end(), '_', ' ');
            if (r.rule.empty())
                r.rule = Core::tr("The race says of \"{rule}\": {words}.",
                                  {{"rule", r.name}, {"words", r.limit_words}});
            r.why = Core::tr("this program does not know the rule");
        } else if (const auto own = rules_.words.find(r.code);
                   !allowed && (own == rules_.words.end() || own->second.text.empty())) {
            r.rule = Core::tr(kind->forbids);
        }
        const Use use = kind ? find_use(name, plan_, car_) : Use{};
        if (use) r.value_words = use->empty() ? Core::tr("none") : *use;
        if (allowed) {
            // What is permitted cannot be broken.
            r.verdict = Verdict::pass;
            r.why.clear();
        } else if (use) {
            r.verdict = use->empty() ? Verdict::pass : Verdict::breach;
            r.why.clear();
        }
    }

    void house() {
        for (std::size_t i = 0; i < rules_.house.size(); ++i) {
            const HouseRule& rule = rules_.house[i];
            InspectionRow& r = row("house/" + std::to_string(i));
            r.name = Core::tr("rule of the house");
            r.rule = rule.text;
            r.inspect = rule.inspect;
            if (!rule.source.empty()) r.source = rule.source;
            r.why = Core::tr("only a person can tell");
        }
    }

    /// What the file states and this version does not know must not pass unseen.
    void others() {
        for (const auto& [key, value] : rules_.others) {
            InspectionRow& r = row(key);
            r.name = key;
            std::replace(r.name.begin(), r.name.end(), '_', ' ');
            r.rule = Core::tr("The race states \"{rule}\".", {{"rule", r.name}});
            r.limit_words = value;
            r.why = Core::tr("this program does not know the rule");
        }
    }

    const Project& project_;
    const Rules& rules_;
    const CarPlan& plan_;
    const CarModel& car_;
    const Figures& figures_;
    std::vector<InspectionRow> rows_;
};

} // namespace

std::size_t Inspection::count(Verdict verdict) const {
    return std::size_t(std::count_if(rows.begin(), rows.end(),
                                     [verdict](const InspectionRow& row) { return row.verdict == verdict; }));
}

Inspection inspect(const Project& project, const CarModel& car, const Figures& figures) {
    return {project.cars.at(car.car).name, project.rules.title, project.rules.source,
            Inspector(project, car, figures).inspect()};
}

Inspection inspect(const Project& project, std::size_t car) {
    return inspect(project, build_car(project, car), compute_figures(project, car));
}

std::vector<Finding> check_rules(const Project& project, const CarModel& car, const Figures& figures) {
    std::vector<Finding> findings;
    for (const InspectionRow& row : Inspector(project, car, figures).inspect()) {
        if (row.verdict == Verdict::margin && row.code == "max_mass_g") {
            const ScaleFigures& scale = *figures.scale;
            findings.push_back(make_finding("scale-worse-reads-over", Severity::note, "/rules/max_mass_g", {},
                                            {{"worse_reads_g", scale.worse_reads / gram},
                                             {"off_g", scale.take_off.mass / gram},
                                             {"pellet_mm", scale.take_off.pellet / millimetre},
                                             {"diameter_mm", scale.pellet_diameter / millimetre}}));
        }
        if (row.verdict != Verdict::breach) continue;
        if (!row.limit) {
            findings.push_back(
                make_finding("rule-breach-words", Severity::breach, "/rules/" + row.code, {}, {}));
            findings.back().text = row.name + ": " + findings.back().text + " " + row.rule;
            continue;
        }
        const bool is_mass = row.quantity == Quantity::mass, is_length = row.quantity == Quantity::length;
        const double scale = is_mass || is_length ? 1e3 : 1;
        const std::string unit = is_mass ? "_g" : is_length ? "_mm" : "";
        // Of the mass: what the car weighs, beside the bound below which it reads legal.
        const bool whole = row.code == "max_mass_g";
        findings.push_back(make_finding("rule-breach", Severity::breach, "/rules/" + row.code, {},
                                        {{"limit" + unit, row.limit.value_or(0) * scale},
                                         {"measured" + unit, (whole ? figures.mass : *row.value) * scale},
                                         {"over" + unit, -row.margin.value_or(0) * scale}}));
        findings.back().text = row.name + ": " + findings.back().text;
    }
    return findings;
}

} // namespace rampwright

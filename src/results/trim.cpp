#include "results/trim.hpp"

#include "car/running_surface.hpp"

#include <rampwright/bench/scale.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/units/format.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

/// A balance point nearer to the plan's than this is as planned: hands do no better.
constexpr double near_enough = 1 * millimetre;
/// What comes off or goes on this near to the balance point is "at the balance point".
constexpr double about = 5 * millimetre;

/// A piece that can be worked on, and how far ahead of the rear axle it sits.
struct Place {
    const BallastPlan* piece = nullptr;
    double mass = 0, ahead = 0;
};

/// Trims one car, step after step.
class Trimmer {
public:
    Trimmer(const Project& project, const CarModel& car, const PlannedStanding& planned, const Vec2& found)
        : project_(project), units_(project.units), planned_(planned), mass_(found.x()), balance_(found.y()) {
        const RunningSurface surface = find_running_surface(car);
        tail_ = surface.level(car.low).x();
        nose_ = surface.level(car.nose).x();
        const CarPlan& plan = project.cars.at(car.car);
        for (std::size_t i = 0; i < plan.ballast.size(); ++i)
            for (const Part& part : car.parts)
                if (part.kind == PartKind::ballast && part.key == car.key + "/ballast/" + std::to_string(i) &&
                    !plan.ballast[i].fixed)
                    pieces_.push_back(
                        {&plan.ballast[i], part.properties.mass, surface.level(part.properties.centre).x()});
    }

    void bring_to_mass(bool balance_known) {
        const double division = project_.scale.division;
        double most = mass_, least = planned_.mass;
        if (project_.rules.max_mass) {
            // The middle of the last legal division: half a division of room for the scale's own error.
            most = legal_bound(project_.scale, *project_.rules.max_mass) - division / 2;
            least = std::min(least, most);
        }
        const double change = mass_ > most ? most - mass_ : mass_ < least ? least - mass_ : 0;
        // Less than half a division nobody can see, unless it keeps the car from being legal.
        const bool illegal =
            project_.rules.max_mass && !weigh(project_.scale, mass_, *project_.rules.max_mass).legal;
        if (change == 0 || (std::abs(change) < division / 2 && !illegal)) return;
        change_mass(change, balance_known);
    }

    void bring_to_balance() {
        const double off = balance_ - planned_.balance;
        if (std::abs(off) <= near_enough) return;
        const auto heaviest = std::max_element(pieces_.begin(), pieces_.end(),
                                               [](auto& a, auto& b) { return movable(a) < movable(b); });
        if (heaviest == pieces_.end() || movable(*heaviest) <= 0) return;
        Trim trim;
        trim.kind = Trim::Kind::move;
        trim.mass = heaviest->mass;
        trim.at = heaviest->ahead;
        trim.placed = true;
        trim.by = -off * mass_ / heaviest->mass;
        trim.piece = heaviest->piece->name;
        trim.text = "Move " + trim.piece + " (" + text(trim.mass, Quantity::mass) + ") " +
                    text(std::abs(trim.by), Quantity::length) + (trim.by > 0 ? " forward" : " back") +
                    ", if its cut lets it.";
        balance_ = planned_.balance;
        finish(std::move(trim));
    }

    std::vector<Trim> take() { return std::move(trims_); }

private:
    /// Putty is taken or added, never moved.
    static double movable(const Place& place) {
        return place.piece->shape == PieceShape::putty ? 0 : place.mass;
    }

    std::string text(double si, Quantity quantity) const { return format(si, quantity, units_); }

    /// The putty nearest to where the weight should change; nullptr where there is none.
    Place* nearest_putty(double ahead, double needed) {
        Place* best = nullptr;
        for (Place& place : pieces_)
            if (place.piece->shape == PieceShape::putty && place.mass >= needed &&
                (!best || std::abs(place.ahead - ahead) < std::abs(best->ahead - ahead)))
                best = &place;
        return best;
    }

    std::string where(double ahead) const {
        if (std::abs(ahead - balance_) < about) return "at the balance point";
        const std::string end = ahead < balance_ ? "the rear" : "the front";
        const std::string distance = text(std::abs(ahead), Quantity::length) +
                                     (ahead < 0 ? " behind the rear axle" : " ahead of the rear axle");
        return "from " + end + ", about " + distance;
    }

    void change_mass(double change, bool balance_known) {
        Trim trim;
        trim.kind = change < 0 ? Trim::Kind::take_off : Trim::Kind::add;
        trim.mass = std::abs(change);
        const bool off = change < 0;
        const double after = mass_ + change;
        // Where the change brings the balance point to the plan's: moments about the rear axle.
        double ahead = balance_known ? (after * planned_.balance - mass_ * balance_) / change : 0;
        if (balance_known) ahead = std::clamp(ahead, tail_, nose_);
        const Place* putty = nearest_putty(balance_known ? ahead : planned_.balance, off ? trim.mass : 0);
        if (putty) {
            trim.piece = putty->piece->name;
            if (off) ahead = putty->ahead; // it can only come off where it is
        }
        trim.placed = balance_known;
        trim.at = balance_known ? ahead : 0;
        trim.text = (off ? "Take " : "Add ") + text(trim.mass, Quantity::mass) +
                    (putty || !off ? " of putty" : "") + (off ? " off" : "");
        if (balance_known) {
            std::string place = where(ahead);
            if (!off && place.starts_with("from ")) place.replace(0, 5, "at ");
            trim.text += off ? ", " + place : " " + place;
        }
        trim.text += ".";
        if (!balance_known) trim.text += " Weigh the front too, to know where.";
        if (balance_known) balance_ = (mass_ * balance_ + change * ahead) / after;
        mass_ = after;
        finish(std::move(trim));
    }

    void finish(Trim trim) {
        trim.mass_after = mass_;
        trim.balance_after = balance_;
        trim.front_load_after = mass_ * balance_ / planned_.wheelbase;
        trims_.push_back(std::move(trim));
    }

    const Project& project_;
    UnitSystem units_;
    PlannedStanding planned_;
    double mass_, balance_, tail_ = 0, nose_ = 0;
    std::vector<Place> pieces_;
    std::vector<Trim> trims_;
};

} // namespace

std::vector<Trim> plan_trims(const Project& project, const CarModel& car, const PlannedStanding& planned,
                             const Vec2& found, bool mass_known, bool balance_known) {
    Trimmer trimmer(project, car, planned, found);
    if (mass_known) trimmer.bring_to_mass(balance_known);
    if (balance_known) trimmer.bring_to_balance();
    return trimmer.take();
}

} // namespace rampwright

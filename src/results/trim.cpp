#include "results/trim.hpp"

#include "car/running_surface.hpp"
#include "core/fill_text.hpp"
#include "results/trim_places.hpp"

#include <rampwright/bench/scale.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/units/format.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

/// A balance point nearer to the plan's than this is as planned: hands do no better.
constexpr double near_enough = 1 * millimetre;
/// What comes off or goes on this near to the balance point is "at the balance point".
constexpr double about = 5 * millimetre;
/// Less than this is neither taken nor added on its own.
constexpr double least_trim = 0.01 * gram;

/// A weight that is no putty.
struct Rigid {
    std::size_t piece = 0;
    double mass = 0, ahead = 0;
};

/// Trims one car, step after step.
class Trimmer {
public:
    Trimmer(const Project& project, const CarModel& car, const PlannedStanding& planned, const Vec2& found,
            bool balance_known)
        : project_(project),
          car_(car),
          plan_(project.cars.at(car.car)),
          units_(project.units),
          planned_(planned),
          mass_(found.x()),
          balance_(found.y()),
          balance_known_(balance_known) {
        const RunningSurface surface = find_running_surface(car);
        tail_ = surface.level(car.low).x();
        nose_ = surface.level(car.nose).x();
        for (std::size_t i = 0; i < plan_.ballast.size(); ++i)
            for (const Part& part : car.parts)
                if (part.key == car.key + "/ballast/" + std::to_string(i) &&
                    plan_.ballast[i].shape != PieceShape::putty)
                    rigid_.push_back({i, part.properties.mass, surface.level(part.properties.centre).x()});
    }

    void bring_to_mass() {
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
        if (change < 0)
            take_off(-change);
        else
            add(change);
    }

    void bring_to_balance() {
        while (std::abs(off()) > near_enough) {
            const Slide best = find_best_slide();
            if (best.weight == rigid_.size()) break;
            move(best);
        }
        if (std::abs(off()) <= near_enough) return;
        const std::string far = text(std::abs(off()), Quantity::length);
        plan_out_.remains =
            off() > 0
                ? Core::tr(
                      "The balance point stays {far} further forward than planned: no weight can be moved "
                      "back any further. A longer pocket would mend it (an adult cuts it), or taking "
                      "weight off in front and putting the same on behind.",
                      {{"far", far}})
                : Core::tr("The balance point stays {far} further back than planned: no weight can be moved "
                           "forward any further. A longer pocket would mend it (an adult cuts it), or taking "
                           "weight off behind and putting the same on in front.",
                           {{"far", far}});
        for (std::size_t i = 0; i < rigid_.size(); ++i) {
            if (std::find(moved_.begin(), moved_.end(), i) != moved_.end()) continue;
            const SlideRoom room = find_slide(plan_, car_, rigid_[i].piece, -off() * mass_ / rigid_[i].mass);
            plan_out_.held_back.push_back(
                why(Core::tr("{piece} stays where it is", {{"piece", plan_.ballast[rigid_[i].piece].name}}),
                    room));
        }
    }

    TrimPlan take() { return std::move(plan_out_); }

private:
    double off() const { return balance_ - planned_.balance; }
    std::string text(double si, Quantity quantity) const { return format(si, quantity, units_); }

    /// Where so much more (or, negative, less) brings the balance point to the plan's: moments about the rear
    /// axle. The plan's balance point where the car's is not known.
    double ideal_place(double change) const {
        if (!balance_known_) return planned_.balance;
        const double after = mass_ + change;
        return std::clamp((after * planned_.balance - mass_ * balance_) / change, tail_, nose_);
    }

    /// "from the rear, about 16.0 mm behind the rear axle", with `at` "at the rear, ...".
    std::string where(double ahead, bool at) const {
        if (std::abs(ahead - balance_) < about) return Core::tr("at the balance point");
        const std::string distance = text(std::abs(ahead), Quantity::length);
        if (ahead < 0)
            return at ? Core::tr("at the rear, about {distance} behind the rear axle",
                                 {{"distance", distance}})
                      : Core::tr("from the rear, about {distance} behind the rear axle",
                                 {{"distance", distance}});
        if (ahead < balance_)
            return at ? Core::tr("at the rear, about {distance} ahead of the rear axle",
                                 {{"distance", distance}})
                      : Core::tr("from the rear, about {distance} ahead of the rear axle",
                                 {{"distance", distance}});
        return at ? Core::tr("at the front, about {distance} ahead of the rear axle",
                             {{"distance", distance}})
                  : Core::tr("from the front, about {distance} ahead of the rear axle",
                             {{"distance", distance}});
    }

    /// The trim with its place behind it, where that is known.
    std::string placed(const std::string& trim, double ahead, bool at) const {
        if (!balance_known_) return trim;
        return Core::tr("{trim}, {place}", {{"trim", trim}, {"place", where(ahead, at)}});
    }

    /// The place among these that is nearest to where the change should be; enough of it before less.
    template <class Place>
    static auto nearest(std::vector<Place>& places, double ahead, double wanted) {
        return std::min_element(places.begin(), places.end(), [&](const Place& a, const Place& b) {
            const bool much = a.mass >= wanted, more = b.mass >= wanted;
            if (much != more) return much;
            return std::abs(a.ahead - ahead) < std::abs(b.ahead - ahead);
        });
    }

    void take_off(double mass) {
        std::vector<LoosePutty> places = find_loose_putty(plan_, car_);
        const bool any = !places.empty();
        while (mass > least_trim && !places.empty()) {
            const auto place = nearest(places, ideal_place(-mass), mass);
            const double amount = std::min(mass, place->mass);
            const std::string& name = plan_.ballast[place->piece].name;
            std::string said =
                placed(Core::tr("Take {mass} of putty off", {{"mass", text(amount, Quantity::mass)}}),
                       place->ahead, false);
            if (amount < mass)
                said = Core::tr("{trim}: that is all there is of {name}", {{"trim", said}, {"name", name}});
            change_mass(-amount, place->ahead, name, said + ".");
            plan_.ballast[place->piece].mass -= amount; // frees what lay in it
            mass -= amount;
            places.erase(place);
        }
        if (mass <= least_trim) return;
        const double ahead = ideal_place(-mass);
        const std::string amount = text(mass, Quantity::mass);
        std::string said = placed(any ? Core::tr("Take {mass} of wood off", {{"mass", amount}})
                                      : Core::tr("Take {mass} off", {{"mass", amount}}),
                                  ahead, false);
        if (any) said = Core::tr("{trim}: no more putty comes off", {{"trim", said}});
        change_mass(-mass, ahead, {}, said + ".");
    }

    void add(double mass) {
        std::vector<OpenCut> places = find_open_cuts(plan_, car_);
        while (mass > least_trim && !places.empty()) {
            const auto place = nearest(places, ideal_place(mass), mass);
            const double amount = std::min(mass, place->mass);
            std::string said =
                placed(Core::tr("Add {mass} of putty in {cut}", {{"mass", text(amount, Quantity::mass)},
                                                                 {"cut", plan_.body.cuts[place->cut].name}}),
                       place->ahead, true);
            said = amount < mass ? Core::tr("{trim}: no more fits there", {{"trim", said}})
                                 : Core::tr("{trim}: there is room for {room}",
                                            {{"trim", said}, {"room", text(place->mass, Quantity::mass)}});
            change_mass(amount, place->ahead,
                        place->putty ? plan_.ballast[*place->putty].name : std::string(), said + ".");
            mass -= amount;
            filled_.push_back(place->cut);
            places.erase(place);
        }
        if (mass <= least_trim) return;
        const double ahead = ideal_place(mass);
        const std::string said =
            placed(Core::tr("Add {mass} that no cut has room for", {{"mass", text(mass, Quantity::mass)}}),
                   ahead, true);
        change_mass(mass, ahead, {},
                    Core::tr("{trim}: an adult drills a hollow for it, or it sits outside where the rules "
                             "allow that.",
                             {{"trim", said}}));
    }

    void change_mass(double change, double ahead, std::string piece, std::string said) {
        Trim trim;
        trim.kind = change < 0 ? Trim::Kind::take_off : Trim::Kind::add;
        trim.mass = std::abs(change);
        trim.placed = balance_known_;
        trim.at = balance_known_ ? ahead : 0;
        trim.piece = std::move(piece);
        trim.text = std::move(said);
        if (!balance_known_)
            trim.text = Core::tr("{trim} Weigh the front too, to know where.", {{"trim", trim.text}});
        const double after = mass_ + change;
        if (balance_known_) balance_ = (mass_ * balance_ + change * ahead) / after;
        mass_ = after;
        finish(std::move(trim));
    }

    /// A weight, by its place among `rigid_` (none: past the end), and how far it goes.
    struct Slide {
        std::size_t weight = 0;
        SlideRoom room;
        bool enough = false;
    };

    /// "Move ..." or "... stays where it is" with what stops the weight there.
    std::string why(const std::string& trim, const SlideRoom& room) const {
        const auto said = [&](const std::string& sentence) {
            return fill_places(sentence, [&](std::string_view name) {
                if (name == "trim") return trim;
                return room.other < plan_.ballast.size() ? plan_.ballast[room.other].name : std::string();
            });
        };
        switch (room.stop) {
        case SlideRoom::Stop::stuck:
            return said(Core::tr("{trim}: it is glued or locked."));
        case SlideRoom::Stop::cut:
            return said(Core::tr("{trim}: it can go no further, its cut ends there."));
        case SlideRoom::Stop::wood:
            return said(Core::tr("{trim}: it can go no further, wood is in the way."));
        case SlideRoom::Stop::outside:
            return said(Core::tr("{trim}: it can go no further without standing out of the body."));
        case SlideRoom::Stop::weight:
            return said(Core::tr("{trim}: it can go no further, {other} is in the way."));
        case SlideRoom::Stop::axle:
            return said(Core::tr("{trim}: it can go no further, an axle is in the way."));
        case SlideRoom::Stop::wheel:
            return said(Core::tr("{trim}: it can go no further, a wheel is in the way."));
        case SlideRoom::Stop::putty:
            return said(Core::tr("{trim}: it is bedded in {other}. It moves once that is taken out."));
        case SlideRoom::Stop::none:
            break;
        }
        return trim + ".";
    }

    /// The heaviest weight that can go all the way; else the one that brings most. Each is asked once.
    Slide find_best_slide() {
        Slide best{rigid_.size(), {}, false};
        double best_moment = 0;
        for (std::size_t i = 0; i < rigid_.size(); ++i) {
            if (std::find(moved_.begin(), moved_.end(), i) != moved_.end()) continue;
            const double wanted = -off() * mass_ / rigid_[i].mass;
            const SlideRoom room = find_slide(plan_, car_, rigid_[i].piece, wanted);
            const bool enough = std::abs(wanted - room.by) < 1e-6;
            const double moment = std::abs(room.by) * rigid_[i].mass;
            const bool better = enough != best.enough ? enough
                                : enough              ? rigid_[i].mass > rigid_[best.weight].mass
                                                      : moment > best_moment;
            // What shifts the balance point by less than a tenth of "near enough" is not worth the work.
            if (!better || (!enough && moment / mass_ < near_enough / 10)) continue;
            best = {i, room, enough};
            best_moment = moment;
        }
        return best;
    }

    void move(const Slide& slide) {
        const Rigid& weight = rigid_[slide.weight];
        BallastPlan& piece = plan_.ballast[weight.piece];
        Trim trim;
        trim.kind = Trim::Kind::move;
        trim.mass = weight.mass;
        trim.at = weight.ahead;
        trim.placed = true;
        trim.by = slide.room.by;
        trim.piece = piece.name;
        const std::string mass = text(trim.mass, Quantity::mass),
                          by = text(std::abs(trim.by), Quantity::length);
        trim.text = trim.by > 0 ? Core::tr("Move {piece} ({mass}) {by} forward",
                                           {{"piece", trim.piece}, {"mass", mass}, {"by", by}})
                                : Core::tr("Move {piece} ({mass}) {by} back",
                                           {{"piece", trim.piece}, {"mass", mass}, {"by", by}});
        const auto cut = find_cut(plan_.body.cuts, piece.in);
        if (cut && std::find(filled_.begin(), filled_.end(), *cut) != filled_.end())
            trim.text = Core::tr("{trim}, before the putty goes in", {{"trim", trim.text}});
        trim.text = slide.enough ? trim.text + "." : why(trim.text, slide.room);
        piece.at.x() += slide.room.by;
        moved_.push_back(slide.weight);
        balance_ = slide.enough ? planned_.balance : balance_ + slide.room.by * weight.mass / mass_;
        finish(std::move(trim));
    }

    void finish(Trim trim) {
        trim.mass_after = mass_;
        trim.balance_after = balance_;
        trim.front_load_after = mass_ * balance_ / planned_.wheelbase;
        plan_out_.trims.push_back(std::move(trim));
    }

    const Project& project_;
    const CarModel& car_;
    CarPlan plan_; ///< as trimmed so far
    UnitSystem units_;
    PlannedStanding planned_;
    double mass_, balance_;
    bool balance_known_;
    double tail_ = 0, nose_ = 0;
    std::vector<Rigid> rigid_;
    std::vector<std::size_t> moved_;
    std::vector<std::size_t> filled_; ///< cuts that putty was added in; what slides there does so before
    TrimPlan plan_out_;
};

} // namespace

TrimPlan plan_trims(const Project& project, const CarModel& car, const PlannedStanding& planned,
                    const Vec2& found, bool mass_known, bool balance_known) {
    Trimmer trimmer(project, car, planned, found, balance_known);
    if (mass_known) trimmer.bring_to_mass();
    if (balance_known) trimmer.bring_to_balance();
    return trimmer.take();
}

} // namespace rampwright

#include "sheet/axle_head.hpp"
#include "sheet/cautions.hpp"
#include "sheet/fitting.hpp"
#include "sheet/job.hpp"
#include "sheet/table.hpp"
#include "text/corner_text.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/results/in_units.hpp>
#include <rampwright/results/next_move.hpp>
#include <rampwright/results/table.hpp>
#include <rampwright/rules/scale_words.hpp>
#include <rampwright/steer/bent_axle.hpp>
#include <rampwright/steer/drift_board.hpp>
#include <rampwright/study/names.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright::ui::paper {
namespace {

constexpr TextStyle list_note{8, false};

/// The parts in the order in which they go into the car: wood, running gear, weights as fitted, what holds
/// them.
std::vector<const Part*> schedule(const Job& job) {
    std::vector<const Part*> parts;
    const auto take = [&](auto&& wanted) {
        for (const Part& part : job.model.parts)
            if (wanted(part)) parts.push_back(&part);
    };
    for (const PartKind kind : {PartKind::body, PartKind::finish, PartKind::axle, PartKind::wheel})
        take([&](const Part& part) { return part.kind == kind; });
    for (const std::size_t piece : fitting_order(job.plan, job.shape)) {
        const std::string key = job.model.key + "/ballast/" + std::to_string(piece);
        take([&](const Part& part) { return part.key == key || part.key == key + "/held"; });
    }
    return parts;
}

QString drift_side(double towards_left) {
    return towards_left > 0 ? Words::tr("to the left") : Words::tr("to the right");
}

} // namespace

void put_weights(Flow& flow, const Job& job) {
    const Words& words = job.words;
    flow.start_page(Words::tr("Weight schedule"));
    flow.paragraph(
        Words::tr("Weigh each piece before it goes in, and write down what the scale says: what was "
                  "measured wins over what was planned."));
    Table table;
    table.columns = {{Words::tr("Piece"), -1},
                     {words.mass_unit(), 18, Align::right},
                     {words.second_mass_unit(), 18, Align::right},
                     {Words::tr("Running total, %1").arg(words.mass_unit()), 24, Align::right},
                     {Words::tr("Running total, %1").arg(words.second_mass_unit()), 24, Align::right},
                     {Words::tr("Weighed, %1").arg(words.mass_unit()), 26, Align::middle}};
    double sum = 0;
    for (const Part* part : schedule(job)) {
        const double mass = part->properties.mass;
        sum += mass;
        table.rows.push_back({from_utf8(part->name), words.bare_mass(mass), words.second_mass(mass),
                              words.bare_mass(sum), words.second_mass(sum), Cell::Kind::blank});
    }
    table.rows.push_back({Cell(Words::tr("All parts"), true), Cell(words.bare_mass(sum), true),
                          Cell(words.second_mass(sum), true), Cell(words.bare_mass(sum), true),
                          Cell(words.second_mass(sum), true), Cell::Kind::blank});
    put_table(flow, table);
    const Figures& f = job.figures;
    if (std::abs(f.mass - sum) > 0.05 * gram)
        flow.paragraph(Words::tr("Weighed as built: %1. The figures on this sheet go by that.")
                           .arg(words.both_masses(f.mass)));
    if (f.scale) {
        flow.paragraph(
            Words::tr("Greatest weight allowed: %1.").arg(words.both_masses(*job.project.rules.max_mass)));
        flow.paragraph(from_utf8(scale_words(job.project, f).front()));
    }
    flow.paragraph(
        Words::tr("Each figure is rounded by itself, so a sum can differ from its parts by the last digit."),
        list_note);
    std::vector<std::string> codes;
    for (const BallastPlan& piece : job.plan.ballast) {
        const auto more = piece_cautions(piece);
        codes.insert(codes.end(), more.begin(), more.end());
    }
    put_cautions(flow, codes);
}

namespace {

void put_wheel_table(Flow& flow, const Job& job) {
    const Words& words = job.words;
    const QString unit = words.length_unit();
    Table table;
    table.columns = {{Words::tr("Wheel"), -1.1},
                     {Words::tr("⌀, %1").arg(unit), 13, Align::right},
                     {Words::tr("Bore, %1").arg(unit), 13, Align::right},
                     {words.mass_unit(), 12, Align::right},
                     {Words::tr("Gap to body, %1").arg(unit), 17, Align::right},
                     {Words::tr("Cant"), 15, Align::right},
                     {Words::tr("Steer"), -1.3},
                     {Words::tr("On the track"), -1.2},
                     {Words::tr("Cant found"), 17},
                     {Words::tr("Steer found"), 17}};
    for (const Wheel& wheel : job.model.wheels) {
        const WheelPlan& plan = job.plan.wheels[static_cast<std::size_t>(wheel.corner)];
        const QString steer =
            wheel.toe == 0 ? Words::tr("straight")
                           : Words::tr("%1 %2").arg(Words::angle(std::abs(wheel.toe)), drift_side(wheel.toe));
        table.rows.push_back(
            {Cell(corner_text(wheel.corner), true), words.bare_length(2 * wheel.radius),
             words.bare_length(2 * wheel.bore_radius), words.bare_mass(wheel.mass),
             words.bare_length(plan.gap_to_body), Words::angle(wheel.cant), steer,
             wheel.touches ? Words::tr("rolls") : Words::tr("raised %1").arg(words.length(wheel.raised)),
             Cell::Kind::blank, Cell::Kind::blank});
    }
    put_table(flow, table);
}

void put_drift_board(Flow& flow, const Job& job) {
    const Words& words = job.words;
    const SteerFigures& steer = job.figures.steer;
    flow.heading(Words::tr("Drift board"));
    const double wheelbase = job.model.front_x - job.model.rear_x;
    constexpr double usual_board = 1.2; // m; a board that fits a hallway (common practice, no source)
    const double over = job.plan.steer.over.value_or(usual_board);
    if (steer.best_toe) {
        const std::optional<double> drift = drift_from_steer(wheelbase, *steer.best_toe, over);
        flow.paragraph(
            Words::tr(
                "Target: over %1 of level board the rear axle drifts %2 %3 (steer %4 %3 at the touching "
                "front wheel).")
                .arg(words.length(over), drift ? words.length(std::abs(*drift)) : QStringLiteral("–"),
                     drift_side(*steer.best_toe), Words::angle(std::abs(*steer.best_toe))),
            {9, true});
    } else {
        flow.paragraph(Words::tr("This lane has no guide rail: the target is no drift at all over %1.")
                           .arg(words.length(over)),
                       {9, true});
    }
    if (job.plan.steer.drift && job.plan.steer.over)
        flow.paragraph(Words::tr("Seen so far: %1 %2 over %3.")
                           .arg(words.length(std::abs(*job.plan.steer.drift)),
                                drift_side(*job.plan.steer.drift), words.length(*job.plan.steer.over)));
    if (steer.guidance_margin)
        flow.paragraph(
            Words::tr("Guidance margin %1: above 1 the front is heavy and steered enough to hold the rail "
                      "against bumps. Chance that it rides the rail all the way: %2.")
                .arg(words.value(*steer.guidance_margin, Quantity::plain),
                     words.value(steer.ride_probability.value_or(0), Quantity::percent)));
    QStringList tuning;
    tuning
        << Words::tr(
               "Level the board both ways with a spirit level; draw a line along it and a cross line at %1.")
               .arg(words.length(over))
        << Words::tr(
               "Start the car straight along the line, three times the same way; read the drift at the rear "
               "axle and take the middle one.")
        << Words::tr(
               "Turn the board end for end and do it again: half of the difference is the car, half of the "
               "sum is the board.");
    if (job.plan.steer.bend && *job.plan.steer.bend > 0) {
        const double turn = job.plan.steer.turn.value_or(0);
        tuning << Words::tr(
                      "This axle is bent by %1. Turned from straight up by %2 now; five degrees more of turn "
                      "change the steer by %3.")
                      .arg(Words::angle(*job.plan.steer.bend), Words::angle(turn),
                           Words::angle(change_by({*job.plan.steer.bend, turn}, 5 * degree).toe));
    } else {
        tuning << Words::tr(
            "Change the steer of the touching front wheel a little at a time, by turning a bent axle in "
            "its hole or by the angle of the hole, never of both wheels at once.");
    }
    tuning << Words::tr(
                  "After every change: push each wheel to its gap again, spin it, roll the car three times.")
           << Words::tr("Stop within a tenth of the target. Mark the axle heads with a pencil, so that a "
                        "turned one shows.");
    if (!job.plan.steer.log.empty())
        tuning << from_utf8(
            next_move_text(steer.next, steer.next_turn, steer.next_turn_towards_rail, words.units));
    Table steps;
    steps.columns = {{QString(), 8},
                     {Words::tr("Tuning"), -1},
                     {Words::tr("Drift read, %1").arg(words.length_unit()), 34}};
    for (const QString& each : tuning)
        steps.rows.push_back({Cell::Kind::box, each, Cell::Kind::blank});
    put_table(flow, steps);
    if (steer.next_turn) put_axle_head(flow, steer.axle_turn, *steer.next_turn);
}

} // namespace

void put_wheels(Flow& flow, const Job& job) {
    const Words& words = job.words;
    const AxlePlan& axles = job.plan.axles;
    flow.start_page(Words::tr("Wheels and axles"));
    put_wheel_table(flow, job);
    flow.paragraph(
        Words::tr(
            "Cant is positive where the axle's outer end is higher. Steer is where the wheel heads, seen "
            "from the driver's seat."),
        list_note);
    flow.paragraph(
        Words::tr("Wheelbase %1. Axles: ⌀ %2, %3 long under the head, %4 each, into holes of ⌀ %5.")
            .arg(words.length(axles.front_x - axles.rear_x), words.length(axles.shank_diameter),
                 words.length(axles.length), words.mass(axles.mass_each), words.length(axles.hole_diameter)));
    flow.paragraph(Words::tr(
        "To set a gap, push the wheel in against a card as thick as the gap, and draw the card out. "
        "The wheel must spin freely and have a little play along the axle."));
    put_drift_board(flow, job);
    put_cautions(flow, {"graphite"});
}

void put_figures(Flow& flow, const Job& job) {
    const Figures& f = job.figures;
    flow.start_page(Words::tr("Expected figures"));
    flow.paragraph(
        Words::tr("Predictions of a model with stated uncertainties, for %1. ± is one standard uncertainty: "
                  "about two heats of three lie within it.")
            .arg(from_utf8(job.project.track.title.empty() ? job.project.title : job.project.track.title)));
    Table table;
    table.columns = {
        {Words::tr("Figure"), -1.4}, {Words::tr("Expected"), -1.2}, {Words::tr("Measured"), -0.8}};
    for (const TableRow& row : table_rows(f, job.words.units))
        table.rows.push_back({from_utf8(row.label), from_utf8(row.value), Cell::Kind::blank});
    put_table(flow, table);
    if (!f.sensitivities.empty()) {
        flow.heading(Words::tr("What changes the time most"));
        Table changes;
        changes.columns = {
            {Words::tr("If this grows"), -1}, {Words::tr("by"), 34}, {Words::tr("the heat takes"), 40}};
        for (std::size_t i = 0; i < std::min<std::size_t>(f.sensitivities.size(), 6); ++i) {
            const Sensitivity& s = f.sensitivities[i];
            changes.rows.push_back({from_utf8(input_name(s.key)),
                                    from_utf8(change_size(s.per, job.words.units)),
                                    (s.ms < 0 ? Words::tr("%1 ms less") : Words::tr("%1 ms more"))
                                        .arg(QString::number(std::abs(s.ms), 'f', 2))});
        }
        put_table(flow, changes);
    }
    if (!f.findings.empty()) {
        flow.heading(Words::tr("To look at"));
        Table findings;
        findings.columns = {{QString(), 26}, {QString(), -1}};
        for (const Finding& finding : f.findings)
            findings.rows.push_back({Cell(finding.severity == Severity::breach    ? Words::tr("Breaks a rule")
                                          : finding.severity == Severity::warning ? Words::tr("Warning")
                                                                                  : Words::tr("Note"),
                                          true),
                                     from_utf8(text_of(finding, job.words.units))});
        put_table(flow, findings);
    }
    if (!f.assumed.empty())
        flow.paragraph(
            Words::tr("%1 values were not given and are the program's usual ones; the more of them you weigh "
                      "and measure, the better the figures.")
                .arg(f.assumed.size()),
            list_note);
}

} // namespace rampwright::ui::paper

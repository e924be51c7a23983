#include "sheet/cautions.hpp"
#include "sheet/job.hpp"
#include "sheet/table.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/materials/materials.hpp>
#include <rampwright/units/format.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace rampwright::ui::paper {
namespace {

constexpr TextStyle card_style{9.5, false};

/// Diameter of a ball of that mass and density, m.
double pellet(double mass, double density) {
    return std::cbrt(6 * mass / (std::numbers::pi * density));
}

void put_trim(Flow& flow, const Job& job) {
    flow.heading(Words::tr("Too heavy on the official scale?"));
    const Material* material = find_material("tungsten putty");
    QString putty = Words::tr("tungsten putty");
    double putty_density = material ? material->density.value : 0;
    if (job.figures.scale && job.figures.scale->putty_density > 0) {
        putty = from_utf8(job.figures.scale->putty);
        putty_density = job.figures.scale->putty_density;
    }
    const double division = job.project.scale.division;
    // Shallow holes that take wood away where there is no putty.
    constexpr double hole_depth = 4 * millimetre, widest_bit = 12 * millimetre;
    double bit = 8 * millimetre;
    for (const double each : job.project.tools.drill_bits)
        if (each <= widest_bit) bit = each;
    const double hole = job.plan.body.density * std::numbers::pi / 4 * bit * bit * hole_depth;
    Table table;
    table.columns = {{Words::tr("Over the limit by"), -1},
                     {Words::tr("Take off"), -0.8},
                     {Words::tr("as a ball of %1, ⌀").arg(putty), -1.4},
                     {Words::tr("or so many holes in the underside"), -1.2}};
    const bool metric = job.words.units == UnitSystem::metric;
    const std::array<double, 5> steps =
        metric ? std::array{0.1, 0.3, 0.5, 1.0, 2.0} : std::array{0.005, 0.01, 0.02, 0.04, 0.07};
    constexpr std::size_t usual = 1; // what a car is too heavy by most often (common practice, no source)
    for (std::size_t n = 0; n < steps.size(); ++n) {
        const double over = steps[n] * (metric ? gram : ounce), off = over + division;
        const bool named = n == usual;
        table.rows.push_back(
            {Cell(job.words.mass(over), named), Cell(job.words.mass(off), named),
             Cell(putty_density > 0 ? job.words.length(pellet(off, putty_density)) : QStringLiteral("–"),
                  named),
             Cell(QString::number(std::ceil(off / hole), 'f', 0), named)});
    }
    put_table(flow, table);
    flow.paragraph(Words::tr("The holes: ⌀ %1, %2 deep, where there is wood.")
                       .arg(job.words.length(bit), job.words.length(hole_depth)));
    flow.paragraph(
        Words::tr(
            "One division of the scale, %1, is added, so that the next reading is surely lower. Putty first: "
            "it is off in seconds, and taken off near the balance point it leaves the balance alone. Holes "
            "are the adult's, with the car clamped. Too light by more than a division: press a ball of it "
            "on, as "
            "far back as the rules allow.")
            .arg(job.words.mass(division)));
}

} // namespace

void put_race_night(Flow& flow, const Job& job) {
    const Words& words = job.words;
    flow.start_page(Words::tr("Race-night card"));
    if (job.figures.scale)
        flow.paragraph(
            Words::tr("The scale should read %1. Limit %2.")
                .arg(words.mass(job.figures.scale->reads), words.mass(*job.project.rules.max_mass)),
            {11, true});
    else
        flow.paragraph(Words::tr("The car should weigh %1.").arg(words.mass(job.figures.mass)), {11, true});
    Table jobs;
    jobs.style = card_style;
    jobs.columns = {{QString(), 8}, {QString(), -1}, {QString(), 40}};
    const auto step = [&](const QString& text) {
        jobs.rows.push_back({Cell::Kind::box, text, Cell::Kind::blank});
    };
    step(Words::tr("Weigh at home, on the same scale as before, once more before leaving"));
    step(Words::tr("Weigh at the hall; trim as below; weigh again; then no more changes"));
    step(Words::tr("Lubricate each wheel over paper, spin, wipe off (child, with an adult by)"));
    step(Words::tr("Every wheel spins; gaps as planned; axle heads in the place of their pencil marks"));
    step(Words::tr("Nose touches the starting pin squarely, nothing hangs below the body"));
    put_table(flow, jobs);
    put_cautions(flow, {"graphite"});
    put_trim(flow, job);
    flow.heading(Words::tr("Bring along"));
    Table bring;
    bring.columns = {{QString(), 8},  {QString(), -1}, {QString(), 8},
                     {QString(), -1}, {QString(), 8},  {QString(), -1}};
    const QString things[] = {
        Words::tr("this card, a pencil"),         Words::tr("two spare wheels, two axles"),
        Words::tr("tungsten putty, tape"),        Words::tr("lubricant, a sheet of paper"),
        Words::tr("fine sandpaper, a rag"),       Words::tr("fast glue and goggles (adult)"),
        Words::tr("pliers, a card for the gaps"), Words::tr("your scale and its test weight"),
        Words::tr("a box with a soft floor")};
    for (std::size_t i = 0; i < std::size(things); i += 3)
        bring.rows.push_back(
            {Cell::Kind::box, things[i], Cell::Kind::box, things[i + 1], Cell::Kind::box, things[i + 2]});
    put_table(flow, bring);
    flow.heading(Words::tr("Heats"));
    const Figures& f = job.figures;
    if (f.heat.time)
        flow.paragraph(
            Words::tr("Expected: %1; 19 heats of 20 between %2 and %3.")
                .arg(from_utf8(format_with_sigma(*f.heat.time, f.heat.sigma, Quantity::time, words.units)),
                     words.value(f.heat.interval95[0], Quantity::time),
                     words.value(f.heat.interval95[1], Quantity::time)));
    Table heats;
    heats.least_height = 6.2;
    heats.columns = {{Words::tr("Heat"), 14, Align::middle},
                     {Words::tr("Lane"), 22},
                     {Words::tr("Time, s"), 34},
                     {Words::tr("Place"), 22},
                     {Words::tr("What we saw"), -1}};
    for (int n = 1; n <= 8; ++n)
        heats.rows.push_back(
            {QString::number(n), Cell::Kind::blank, Cell::Kind::blank, Cell::Kind::blank, Cell::Kind::blank});
    put_table(flow, heats);
}

} // namespace rampwright::ui::paper

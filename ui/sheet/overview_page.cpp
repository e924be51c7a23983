#include "sheet/job.hpp"
#include "sheet/table.hpp"
#include "sheet/views.hpp"

#include <rampwright/results/table.hpp>

#include <algorithm>
#include <array>

namespace rampwright::ui::paper {
namespace {

/// The figures that stand on the first page, by their codes.
constexpr std::array<std::string_view, 7> headline_codes{
    "mass_g",       "scale.reads_g", "scale.margin_g",   "balance_ahead_of_rear_axle_mm",
    "front_load_g", "heat.time_s",   "heat.interval95_s"};

void put_title(Flow& flow, const Job& job) {
    const auto line = [&](const QString& text, const TextStyle& style) {
        for (const QString& each : wrapped(text, style, flow.body().width())) {
            flow.need(leading_of(style));
            flow.put({flow.body().left(), flow.y() + ascent_of(style)}, each, style);
            flow.skip(leading_of(style));
        }
    };
    QString name = from_utf8(job.plan.name);
    if (!job.plan.number.empty()) name = Words::tr("%1, no. %2").arg(name, from_utf8(job.plan.number));
    line(name, {20, true});
    if (!job.project.title.empty()) line(from_utf8(job.project.title), {10.5, false});
    QString when =
        Words::tr("Made from %1 on %2.").arg(job.request.file, job.request.date.toString(Qt::ISODate));
    if (!job.project.race.date.empty())
        when +=
            QLatin1Char(' ') + Words::tr("Race: %1 %2.")
                                   .arg(from_utf8(job.project.race.date), from_utf8(job.project.race.starts));
    if (!job.plan.paint.empty())
        when += QLatin1Char(' ') + Words::tr("Paint: %1.").arg(from_utf8(job.plan.paint));
    line(when, {8.5, false});
    flow.skip(3);
}

void put_overview_at(Flow& flow, const Job& job, double size) {
    flow.start_page(Words::tr("Build sheet"));
    put_title(flow, job);
    TwoViews views;
    views.wheels = views.ballast = views.centre = views.length = true;
    views.most_scale = 0.85;
    views.size = size;
    views.say = [&](const Placement& placed, Callouts&, Callouts& below, Callouts&) {
        if (placed.view == View::top) return;
        const Vec3 centre = job.figures.centre;
        const auto ground = [&](double x) { return placed.at(Vec3(x, 0, job.shape.ground_at(x))); };
        below.add(Words::tr("rear axle"), ground(job.shape.axle_x[0]));
        below.add(Words::tr("balances %1 ahead of it")
                      .arg(job.words.length(job.figures.balance_ahead_of_rear_axle)),
                  ground(centre.x()));
        below.add(Words::tr("front axle carries %1").arg(job.words.mass(job.figures.front_load)),
                  ground(job.shape.axle_x[1]));
    };
    const double scale = put_two_views(flow, job, views);
    flow.paragraph(
        Words::tr(
            "Drawn at %1 of true size, first-angle projection: the top view stands below the side view. "
            "The quartered circle is the balance point.")
            .arg(QStringLiteral("%1 %").arg(100 * scale, 0, 'f', 0)),
        {7.5, false});

    Table table;
    table.columns = {{Words::tr("What to expect"), -1}, {QString(), -1}};
    for (const TableRow& row : table_rows(job.figures, job.words.units))
        if (std::find(headline_codes.begin(), headline_codes.end(), row.code) != headline_codes.end())
            table.rows.push_back({from_utf8(row.label), Cell(from_utf8(row.value), true)});
    put_table(flow, table);

    flow.heading(Words::tr("How to use this sheet"));
    flow.paragraph(
        Words::tr("Print it at 100 % (“actual size”). On the template page, measure the two bars before "
                  "you cut anything. Work through the steps in order and tick their boxes; every step says "
                  "who does it. Write what you measure into the blanks: typed back into the project, it "
                  "makes the next sheet better."));
    flow.paragraph(
        Words::tr(
            "An adult does the cutting, drilling and everything hot, and decides together with the local "
            "rules. Work with eye protection on, the wood clamped, in fresh air."),
        {8.5, true});
    if (!job.project.notes.empty()) {
        flow.heading(Words::tr("Notes of the project"));
        flow.paragraph(from_utf8(job.project.notes));
    }
}

} // namespace

void put_overview(Flow& flow, const Job& job) {
    flow.section([&](double size) { put_overview_at(flow, job, size); });
}

} // namespace rampwright::ui::paper

#include "sheet/job.hpp"
#include "sheet/table.hpp"
#include "text/said.hpp"

#include <rampwright/rules/inspection.hpp>
#include <rampwright/rules/scale_words.hpp>

#include <QCoreApplication>

namespace rampwright::ui::paper {
namespace {

constexpr TextStyle look_style{7.5, false};

/// The rule in a few words, and how it is looked at.
QString rule_words(const InspectionRow& row) {
    QString name = from_utf8(row.name);
    if (!name.isEmpty()) name[0] = name[0].toUpper();
    return row.inspect.empty() ? name : QStringLiteral("%1\n%2").arg(name, from_utf8(row.inspect));
}

/// Room to write what is measured, beside the plan's values.
void put_measured(Flow& flow, const Job& job) {
    flow.heading(Words::tr("Measured on the finished car"));
    flow.paragraph(
        Words::tr("Type these into the project: the next sheet then shows the car as it was built."));
    const Words& words = job.words;
    // What nobody has measured yet is the plan's own.
    const Figures& f = job.figures;
    Table built;
    built.least_height = 7;
    built.columns = {{Words::tr("What"), -1.7},
                     {Words::tr("Planned"), -1, Align::right},
                     {Words::tr("Built so far"), -1, Align::right},
                     {Words::tr("First"), 22},
                     {Words::tr("Second"), 22},
                     {Words::tr("Third"), 22}};
    const auto row = [&](const QString& what, const char* code, double now, Quantity quantity) {
        QString planned = words.value(now, quantity), measured = QStringLiteral("–");
        if (f.built)
            for (const BuiltLine& line : f.built->lines)
                if (line.code == code) {
                    planned = words.value(line.planned, quantity);
                    measured = words.value(line.built, quantity);
                }
        built.rows.push_back(
            {what, planned, measured, Cell::Kind::blank, Cell::Kind::blank, Cell::Kind::blank});
    };
    row(Words::tr("Weight of the car"), "mass_g", f.mass, Quantity::mass);
    row(Words::tr("Weight under the front wheels, car level"), "front_load_g", f.front_load, Quantity::mass);
    row(Words::tr("Balance point ahead of the rear axle"), "balance_ahead_of_rear_axle_mm",
        f.balance_ahead_of_rear_axle, Quantity::length);
    put_table(flow, built);
    flow.paragraph(Words::tr(
        "Front weight with one kitchen scale: front wheels on the scale, rear wheels on a block of the "
        "same height; read three times, lifting the car off in between."));
}

/// The room that takes: it stays on one page, so that no continuation holds a single line of it.
double measured_height(const Job& job) {
    Sheet trial;
    trial.paper = job.request.paper;
    Flow flow(trial, {});
    flow.start_page({});
    put_measured(flow, job);
    return flow.y() - flow.body().top() + 4; // what a heading keeps away from what stands above it
}

} // namespace

void put_inspection(Flow& flow, const Job& job) {
    const Words& words = job.words;
    const Inspection inspection = inspect(job.project, job.model, job.figures);
    flow.start_page(Words::tr("Inspection list"));
    flow.paragraph(Words::tr("Rules: %1. Source: %2. %3")
                       .arg(inspection.title.empty() ? Words::tr("not named") : from_utf8(inspection.title),
                            inspection.source.empty() ? Words::tr("not given") : from_utf8(inspection.source),
                            // The same sentence as on the screen, by its translation there.
                            QCoreApplication::translate("Verdicts", inspector_decides.data())));
    Table table;
    table.columns = {{Words::tr("Rule, and how it is looked at"), -2.1},
                     {Words::tr("Limit"), -1.4},
                     {Words::tr("Planned"), -0.9},
                     {Words::tr("Room"), -0.9},
                     {Words::tr("The plan"), -1},
                     {Words::tr("Measured"), 21},
                     {Words::tr("OK"), 9, Align::middle}};
    table.least_height = 6.5;
    table.style = look_style;
    const auto words_of = [](const std::string& text) { return from_utf8(text); };
    for (const InspectionRow& row : inspection.rows)
        table.rows.push_back({rule_words(row), words_of(limit_text(row, words.units)),
                              words_of(value_text(row, words.units)), words_of(margin_text(row, words.units)),
                              Cell(said(in_words(row.verdict)), row.verdict != Verdict::pass),
                              Cell::Kind::blank, Cell::Kind::box});
    if (table.rows.empty()) flow.paragraph(Words::tr("The project states no rules: ask for the local ones."));
    put_table(flow, table);
    for (const std::string& sentence : scale_words(job.project, job.figures))
        flow.paragraph(from_utf8(sentence), {8, false});
    flow.need(measured_height(job));
    put_measured(flow, job);
    const Figures& f = job.figures;
    if (!f.built || f.built->words.empty()) return;
    flow.heading(Words::tr("Built against planned, and what to do"));
    for (const std::string& sentence : f.built->words)
        flow.paragraph(from_utf8(sentence));
}

} // namespace rampwright::ui::paper

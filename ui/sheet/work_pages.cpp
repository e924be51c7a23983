#include "sheet/cautions.hpp"
#include "sheet/share_pages.hpp"
#include "sheet/steps.hpp"
#include "sheet/table.hpp"

#include <QDateTime>
#include <QLocale>

namespace rampwright::ui::paper {
namespace {

constexpr TextStyle step_style{9.5, true}, who_style{8.5, false}, who_bold{8.5, true};
constexpr double step_indent = 12;

/// Room for "Child" and "Adult", as long as they are in the person's language.
double who_width() {
    return std::max(
        14.0, 2 + std::max(width_of(Words::tr("Child"), who_bold), width_of(Words::tr("Adult"), who_bold)));
}

/// Who does what: "Child" and the words beside it.
double put_who(Flow& flow, const QString& who, const QString& what, bool measure_only) {
    if (what.isEmpty()) return 0;
    const QStringList lines = wrapped(what, who_style, flow.body().width() - step_indent - who_width());
    const double height = double(lines.size()) * leading_of(who_style) + 0.4;
    if (measure_only) return height;
    double y = flow.y();
    flow.put({flow.body().left() + step_indent, y + ascent_of(who_bold)}, who, who_bold);
    for (const QString& line : lines) {
        flow.put({flow.body().left() + step_indent + who_width(), y + ascent_of(who_style)}, line, who_style);
        y += leading_of(who_style);
    }
    flow.skip(height);
    return height;
}

double step_height(Flow& flow, const Step& step, double gap) {
    return leading_of(step_style) + gap + put_who(flow, {}, step.child, true) +
           put_who(flow, {}, step.adult, true) + cautions_height(flow, step.cautions, step_indent);
}

void put_step(Flow& flow, const Step& step, std::size_t number, double gap) {
    const double left = flow.body().left();
    flow.line({left, flow.y() - 0.6}, {flow.body().right(), flow.y() - 0.6}, 0.1);
    flow.tick_box({left, flow.y() + 0.3}, 3.4, step.done);
    flow.put({left + step_indent - 2, flow.y() + ascent_of(step_style)}, QString::number(number), step_style,
             Align::right);
    flow.put({left + step_indent, flow.y() + ascent_of(step_style)},
             elided(step.what, step_style, flow.body().width() - step_indent), step_style);
    flow.skip(leading_of(step_style));
    put_who(flow, Words::tr("Child"), step.child, false);
    put_who(flow, Words::tr("Adult"), step.adult, false);
    put_cautions(flow, step.cautions, step_indent);
    flow.skip(gap);
}

/// "Fri 13 Feb, 18:30", or how long before the race where its hour is not known.
QString when_words(const Job& job, int minutes_before) {
    const RaceTime& race = job.project.race;
    if (!race.date.empty()) {
        const QDate day = QDate::fromString(from_utf8(race.date), Qt::ISODate);
        if (day.isValid()) {
            const bool hour_known = !race.starts.empty();
            // A wall clock without time zone: no hour is skipped or comes twice.
            const QDateTime start(day,
                                  hour_known
                                      ? QTime::fromString(from_utf8(race.starts), QStringLiteral("HH:mm"))
                                      : QTime(18, 0),
                                  Qt::UTC);
            const QLocale locale(Words::tr("C", "name of the locale that days and months are written in"));
            return locale.toString(start.addSecs(-60 * qint64(minutes_before)),
                                   hour_known || minutes_before == 0 ? Words::tr("ddd d MMM, HH:mm")
                                                                     : Words::tr("ddd d MMM"));
        }
    }
    if (minutes_before == 0) return Words::tr("the race");
    if (minutes_before >= 48 * 60) return Words::tr("%1 days before").arg(minutes_before / (24 * 60));
    if (minutes_before >= 120) return Words::tr("%1 hours before").arg(minutes_before / 60);
    return Words::tr("%1 minutes before").arg(minutes_before);
}

} // namespace

void put_steps(Flow& flow, const Job& job) {
    flow.start_page(Words::tr("Steps"));
    flow.paragraph(
        Words::tr("For every step: who does it, and what can hurt. A ticked box is a step that the project "
                  "already says is done."));
    flow.skip(1);
    const std::vector<Step> steps = build_steps(job);
    std::vector<double> heights;
    for (const double gap : {1.5, 1.0, 0.6}) {
        std::vector<double> closer;
        for (const Step& step : steps)
            closer.push_back(step_height(flow, step, gap));
        const auto pages = [&](const std::vector<double>& each) {
            return fill_pages(each, flow.room(), flow.body().height()).size();
        };
        // Closer together only where that spares a page.
        if (heights.empty() || pages(closer) < pages(heights)) heights = closer;
    }
    std::size_t next = 0;
    for (const std::size_t count : share_pages(heights, flow.room(), flow.body().height())) {
        if (next > 0) flow.start_page(QString(flow.page().title));
        for (std::size_t i = 0; i < count; ++i, ++next)
            put_step(flow, steps[next], next + 1, heights[next] - step_height(flow, steps[next], 0));
    }
}

void put_countdown(Flow& flow, const Job& job) {
    flow.start_page(Words::tr("Back from the race"));
    const RaceTime& race = job.project.race;
    QString intro =
        race.date.empty()
            ? Words::tr("The project does not say when the race is: with its date and hour, this page shows "
                        "a calendar.")
            : Words::tr(
                  "Counted back from the race, %1 %2. What lies past already: look at the right-hand column.")
                  .arg(from_utf8(race.date),
                       race.starts.empty() ? Words::tr("(hour not given)") : from_utf8(race.starts));
    flow.paragraph(intro);
    flow.paragraph(
        Words::tr("The times are common practice; what the paint's and the glue's packet says goes first."));
    Table table;
    table.style.points = 9;
    table.columns = {{QString(), 8},
                     {Words::tr("Done by"), 36},
                     {Words::tr("What"), -1.3},
                     {Words::tr("If time is short, leave out"), -1}};
    for (const Deadline& each : deadlines(job))
        table.rows.push_back(
            {Cell::Kind::box, Cell(when_words(job, each.minutes_before), true), each.what, each.left_out});
    put_table(flow, table);
    flow.heading(Words::tr("Tonight only?"));
    flow.paragraph(Words::tr(
        "Block shape, axle holes square, wheels that spin freely, weight just under the limit and well to "
        "the rear, and a dry lubricant: that is most of the speed. Paint, polish to a mirror, and "
        "round edges can wait for the next car. Never leave out clamps, eye protection or the weighing."));
}

} // namespace rampwright::ui::paper

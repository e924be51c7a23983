#include "sheet/check_bars.hpp"

#include <algorithm>
#include <cmath>

namespace rampwright::ui::paper {
namespace {

constexpr double four_inches = 101.6;
constexpr TextStyle bar_style{8, false}, bar_bold{8.5, true};
constexpr double lying_height = 24, tick = 1.6;

/// A bar with end ticks and ten parts; its length is from the outer edge of one end to that of the other.
void put_bar(Flow& flow, QPointF from, QPointF to, double length) {
    const QPointF along = (to - from) / std::hypot(to.x() - from.x(), to.y() - from.y());
    const QPointF across(-along.y(), along.x());
    constexpr double height = 3;
    // Black and white fields: what is measured is where black begins and where it ends.
    constexpr int fields = 10;
    const double field = std::hypot(to.x() - from.x(), to.y() - from.y()) / fields;
    QPainterPath outline;
    outline.addPolygon(QPolygonF({from, to, to + across * height, from + across * height}));
    outline.closeSubpath();
    // The line is drawn inside of the length, so that the ink ends where the length ends.
    constexpr double pen = 0.2;
    QPainterPath inside;
    const QPointF a = from + (along + across) * (pen / 2), b = to + (across - along) * (pen / 2);
    inside.addPolygon(QPolygonF({a, b, b + across * (height - pen), a + across * (height - pen)}));
    inside.closeSubpath();
    flow.stroke(inside, pen);
    for (int i = 0; i < fields; i += 2) {
        QPainterPath black;
        const QPointF start = from + along * (i * field);
        black.addPolygon(QPolygonF({start, start + along * field, start + along * field + across * height,
                                    start + across * height}));
        black.closeSubpath();
        flow.fill(black, 0, 0);
    }
    flow.page().bars.push_back({from, to, length});
}

QString how_to(const Job& job) {
    QString text =
        Words::tr("Check before you cut. Print at 100 % (“actual size”), never “fit to page”. Lay a "
                  "ruler along both bars, from the outer edge of the black to the outer edge of "
                  "the last field: 100 mm and 4 in. If a bar is off by more than half a millimetre, "
                  "measure the 100 mm bar as printed and print again with what it measures.");
    if (job.scale != 1)
        text +=
            QLatin1Char(' ') +
            Words::tr("This print makes up for a printer whose 100 mm bar came out at %1 mm: templates and "
                      "bars are drawn %2 times their size, to be printed with the same setting as then.")
                .arg(QString::number(job.request.printed_bar, 'f', 1), QString::number(job.scale, 'f', 4));
    return text;
}

} // namespace

double check_bars_height(const Job& job) {
    return lying_height + leading_of(bar_style) * (job.scale == 1 ? 4 : 6);
}

void put_check_bars(Flow& flow, const Job& job) {
    const double upright = four_inches * job.scale, lying = 100 * job.scale;
    const QRectF& body = flow.body();
    const bool stands = flow.room() >= upright + 2;
    double y = stands ? body.bottom() - upright - 1 : flow.y() + 2;
    double text_width = body.width();
    if (stands) {
        const double x = body.right() - 4;
        put_bar(flow, {x, y}, {x, y + upright}, four_inches);
        flow.put({x - 4.5, y + ascent_of(bar_bold)}, Words::tr("This bar is 4 in long"), bar_bold,
                 Align::right);
        text_width -= 24;
    }
    y = stands ? std::max(y, body.bottom() - check_bars_height(job)) : y;
    flow.put({body.left(), y + ascent_of(bar_bold)}, Words::tr("This bar is 100 mm long"), bar_bold);
    y += leading_of(bar_bold) + 0.6;
    put_bar(flow, {body.left(), y}, {body.left() + lying, y}, 100);
    y += 5;
    if (!stands) {
        flow.put({body.left(), y + ascent_of(bar_bold)}, Words::tr("This bar is 4 in long"), bar_bold);
        y += leading_of(bar_bold) + 0.6;
        put_bar(flow, {body.left(), y}, {body.left() + upright, y}, four_inches);
        y += 5;
    }
    for (const QString& line : wrapped(how_to(job), bar_style, text_width)) {
        flow.put({body.left(), y + ascent_of(bar_style)}, line, bar_style);
        y += leading_of(bar_style);
    }
    flow.skip(y - flow.y());
}

} // namespace rampwright::ui::paper

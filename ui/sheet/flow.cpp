#include "sheet/flow.hpp"

#include "sheet/words.hpp"

namespace rampwright::ui::paper {
namespace {

constexpr double header_height = 15, footer_height = 8;
constexpr TextStyle title_style{15, true}, heading_style{10.5, true}, margin_style{7.5, false},
    count_style{8.5, true};

} // namespace

Flow::Flow(Sheet& sheet, Margins margins) : sheet_(sheet), margins_(std::move(margins)) {
    body_ = printable(sheet.paper).adjusted(0, header_height, 0, -footer_height);
}

void Flow::start_page(const QString& title) {
    sheet_.pages.push_back({title, {}, {}, {}});
    y_ = body_.top();
}

void Flow::need(double mm) {
    if (mm > room() && y_ > body_.top()) start_page(QString(page().title));
}

void Flow::section(const std::function<void(double size)>& put) {
    constexpr double little = 0.4; // of a page
    const auto before = static_cast<std::ptrdiff_t>(sheet_.pages.size());
    const auto again = [&](double size) {
        sheet_.pages.erase(sheet_.pages.begin() + before, sheet_.pages.end());
        put(size);
        return sheet_.pages.size();
    };
    const std::size_t pages = again(1);
    if (pages <= static_cast<std::size_t>(before) + 1 || y_ - body_.top() > little * body_.height()) return;
    for (const double size : {0.9, 0.8, 0.7, 0.6, 0.5})
        if (again(size) < pages) return;
    again(1);
}

void Flow::heading(const QString& text) {
    const QStringList lines = wrapped(text, heading_style, body_.width());
    const double height = leading_of(heading_style) * double(lines.size());
    // A heading stays with what it heads.
    need(height + 18);
    if (y_ > body_.top()) y_ += 4;
    for (const QString& each : lines) {
        put({body_.left(), y_ + ascent_of(heading_style)}, each, heading_style);
        y_ += leading_of(heading_style);
    }
    y_ += 0.8;
}

void Flow::paragraph(const QString& text, const TextStyle& style, double indent) {
    const double step = leading_of(style);
    for (const QString& each : wrapped(text, style, body_.width() - indent)) {
        need(step);
        put({body_.left() + indent, y_ + ascent_of(style)}, each, style);
        y_ += step;
    }
    y_ += 0.35 * step;
}

QRectF Flow::put(QPointF baseline, const QString& text, const TextStyle& style, Align align, bool cleared) {
    const double width = width_of(text, style);
    const double left = align == Align::left    ? baseline.x()
                        : align == Align::right ? baseline.x() - width
                                                : baseline.x() - width / 2;
    const QRectF box(left, baseline.y() - ascent_of(style), width, ascent_of(style) + descent_of(style));
    if (!text.trimmed().isEmpty()) page().ink.push_back(TextInk{text, box, baseline.y(), style, cleared});
    return box;
}

void Flow::stroke(const QPainterPath& path, double width, Stroke stroke) {
    page().ink.push_back(PathInk{path, width, stroke, {}, {}});
}

void Flow::line(QPointF from, QPointF to, double width, Stroke stroke) {
    QPainterPath path(from);
    path.lineTo(to);
    this->stroke(path, width, stroke);
}

void Flow::fill(const QPainterPath& path, double grey, double width) {
    page().ink.push_back(PathInk{path, width, Stroke::solid, grey, {}});
}

void Flow::tick_box(QPointF corner, double side, bool ticked) {
    QPainterPath box;
    box.addRect(QRectF(corner, QSizeF(side, side)));
    stroke(box, 0.3);
    if (!ticked) return;
    QPainterPath tick(corner + QPointF(0.2, 0.55) * side);
    tick.lineTo(corner + QPointF(0.45, 0.85) * side);
    tick.lineTo(corner + QPointF(0.95, 0.05) * side);
    stroke(tick, 0.5);
}

void Flow::finish() {
    const QRectF room = printable(sheet_.paper);
    const double left = room.left(), right = room.right();
    std::vector<Page> pages = std::move(sheet_.pages);
    sheet_.pages.clear();
    QString before;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const QString title =
            pages[i].title == before ? Words::tr("%1, continued").arg(before) : pages[i].title;
        before = pages[i].title;
        sheet_.pages.push_back(std::move(pages[i]));
        const double base = room.top() + ascent_of(title_style);
        const QString car = elided(margins_.car, heading_style, 0.35 * room.width());
        const double car_width = width_of(car, heading_style);
        put({left, base}, elided(title, title_style, room.width() - car_width - 6), title_style);
        put({right, base}, car, heading_style, Align::right);
        line({left, base + 2.4}, {right, base + 2.4}, 0.5);

        const double foot = room.bottom() - descent_of(count_style);
        const double rule = room.bottom() - footer_height + 2.2;
        line({left, rule}, {right, rule}, 0.15);
        const QString count = Words::tr("Page %1 of %2").arg(i + 1).arg(pages.size());
        put({right, foot}, count, count_style, Align::right);
        const QString decide = Words::tr("Local rules and the adult in charge decide.");
        const double decide_width = width_of(decide, margin_style),
                     count_width = width_of(count, count_style);
        put({right - count_width - 6, foot}, decide, margin_style, Align::right);
        put({left, foot},
            elided(margins_.origin, margin_style, room.width() - count_width - decide_width - 12),
            margin_style);
    }
}

} // namespace rampwright::ui::paper

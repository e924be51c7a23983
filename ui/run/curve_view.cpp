#include "run/curve_view.hpp"

#include "look/theme.hpp"
#include "text/corner_text.hpp"
#include "text/figure_text.hpp"

#include <rampwright/units/format.hpp>

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <functional>

namespace rampwright::ui {

struct CurveView::Line {
    QString name;
    std::function<std::optional<double>(const CurvePoint&)> value; ///< in `unit`
    std::size_t colour = 0;
};

struct CurveView::Strip {
    QString title, unit;
    int decimals = 1;
    std::vector<Line> lines;
    double height = 1; ///< relative
};

namespace {

constexpr double left_margin = 58, right_margin = 148, strip_gap = 8;
constexpr std::array<Qt::PenStyle, 4> dashes{Qt::SolidLine, Qt::DashLine, Qt::DotLine, Qt::DashDotLine};

Qt::PenStyle dash_of(std::size_t n) {
    return dashes[n % dashes.size()];
}

/// A round number not below `value`: 1, 2 or 5 times a power of ten.
double round_up(double value) {
    if (!(value > 0)) return 1;
    const double power = std::pow(10.0, std::floor(std::log10(value)));
    for (const double step : {1.0, 2.0, 2.5, 5.0, 10.0})
        if (step * power >= value * (1 - 1e-9)) return step * power;
    return 10 * power;
}

QString number_words(double value, int decimals) {
    return QString::fromStdString(format(value, Quantity::plain, UnitSystem::metric, {.decimals = decimals}));
}

} // namespace

CurveView::CurveView(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    setObjectName(QStringLiteral("curves"));
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setWhatsThis(
        tr("The heat along the lane. Move the mouse over it, or use the arrow keys, to read the numbers "
           "at a place."));
    const auto stale = [this] {
        stale_ = true;
        if (isVisible()) refresh();
    };
    connect(&session_, &Session::changed, this, stale);
    connect(&session_, &Session::car_chosen, this, stale);
}

void CurveView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

void CurveView::refresh() {
    stale_ = false;
    try {
        curves_ = curves_along_track(session_.project(), session_.car());
        track_ = std::make_shared<const Track>(session_.project().track);
        cursor_ = std::clamp(cursor_, 0.0, curves_->length);
    } catch (const Problem&) {
        curves_.reset();
    }
    tell();
    update();
}

void CurveView::set_cursor(double at) {
    if (!curves_) return;
    cursor_ = std::clamp(at, 0.0, curves_->length);
    tell();
    update();
    Q_EMIT cursor_moved(cursor_);
}

/// The numbers at the cursor, for those who cannot see the picture.
void CurveView::tell() {
    if (!curves_) {
        setAccessibleName(tr("The heat along the lane: nothing to show, the car cannot be computed."));
        return;
    }
    const UnitSystem units = session_.project().units;
    const CurvePoint at = curve_at(*curves_, cursor_);
    setAccessibleName(
        tr("The heat along the lane, %1 from the start: %2, speed %3, front load %4")
            .arg(quantity_text(cursor_, Quantity::length, units),
                 quantity_text(at.time, Quantity::time, units),
                 quantity_text(at.speed, Quantity::speed, units),
                 quantity_text(at.front_load / session_.project().track.gravity, Quantity::mass, units)));
}

std::vector<CurveView::Strip> CurveView::strips() const {
    const UnitSystem units = session_.project().units;
    const auto in_unit = [units](Quantity quantity) {
        const Unit& unit = default_unit(quantity, units);
        return std::pair{QString::fromUtf8(unit.symbol.data(), qsizetype(unit.symbol.size())),
                         1 / unit.scale};
    };
    const auto [speed_unit, per_speed] = in_unit(Quantity::speed);
    const auto [mass_unit, per_mass] = in_unit(Quantity::mass);
    const double per_newton = per_mass / session_.project().track.gravity;
    std::vector<Strip> made;
    made.push_back(
        {tr("Speed"),
         speed_unit,
         2,
         {{tr("speed"), [k = per_speed](const CurvePoint& p) { return std::optional(k * p.speed); }, 0}},
         0.9});
    Strip loads{tr("Load under the wheels"), mass_unit, units == UnitSystem::metric ? 1 : 2, {}, 1.1};
    std::size_t colour = 0;
    for (const Corner corner :
         {Corner::front_left, Corner::front_right, Corner::rear_left, Corner::rear_right}) {
        const std::size_t n = static_cast<std::size_t>(corner);
        if (!curves_->points.front().wheel_load[n]) continue;
        loads.lines.push_back({corner_text(corner),
                               [n, k = per_newton](const CurvePoint& p) -> std::optional<double> {
                                   if (!p.wheel_load[n]) return std::nullopt;
                                   return k * *p.wheel_load[n];
                               },
                               colour++});
    }
    made.push_back(std::move(loads));
    Strip losses{tr("Power lost"), tr("mW"), 1, {}, 1.2};
    const auto add = [&](const QString& name, double LossPowers::*power, std::size_t n) {
        losses.lines.push_back(
            {name, [power](const CurvePoint& p) { return std::optional(1e3 * p.power.*power); }, n});
    };
    add(tr("axles"), &LossPowers::journal, 0);
    add(tr("air"), &LossPowers::air, 1);
    add(tr("rolling"), &LossPowers::rolling, 2);
    if (curves_->points.front().power.rail)
        losses.lines.push_back({tr("rail"),
                                [](const CurvePoint& p) -> std::optional<double> {
                                    return p.power.rail ? std::optional(1e3 * *p.power.rail) : std::nullopt;
                                },
                                3});
    add(tr("hubs"), &LossPowers::hub, 4);
    add(tr("scrub"), &LossPowers::scrub, 5);
    made.push_back(std::move(losses));
    return made;
}

double CurveView::place_of(double x) const {
    const double wide = width() - left_margin - right_margin;
    return curves_ && wide > 0 ? (x - left_margin) / wide * curves_->length : 0;
}

void CurveView::paint_strip(QPainter& painter, const Strip& strip, const QRectF& room) const {
    const Theme& t = theme();
    double most = 0, least = 0;
    for (const Line& line : strip.lines)
        for (const CurvePoint& point : curves_->points)
            if (const auto value = line.value(point)) {
                most = std::max(most, *value);
                least = std::min(least, *value);
            }
    most = round_up(most);
    if (least < 0) least = -round_up(-least);
    const auto to_pixel = [&](double at, double value) {
        return QPointF(room.left() + at / curves_->length * room.width(),
                       room.bottom() - (value - least) / (most - least) * room.height());
    };
    painter.setFont(text_font(0.85));
    painter.setPen(QPen(t.grid, 1));
    for (const double part : {0.0, 0.5, 1.0}) {
        const double y = room.bottom() - part * room.height();
        painter.setPen(QPen(part == 0 ? t.paper_edge : t.grid, 1));
        painter.drawLine(QPointF(room.left(), y), QPointF(room.right(), y));
        painter.setPen(t.faint_ink);
        const double value = least + part * (most - least);
        painter.drawText(QRectF(0, y - 8, room.left() - 6, 16), Qt::AlignRight | Qt::AlignVCenter,
                         number_words(value, most < 3    ? 2
                                             : most < 10 ? 1
                                                         : 0));
    }
    painter.save();
    painter.setClipRect(room.adjusted(0, -1, 0, 1));
    for (std::size_t n = 0; n < strip.lines.size(); ++n) {
        QPainterPath path;
        bool begun = false;
        for (const CurvePoint& point : curves_->points) {
            const auto value = strip.lines[n].value(point);
            if (!value) continue;
            const QPointF at = to_pixel(point.at, *value);
            begun ? path.lineTo(at) : path.moveTo(at);
            begun = true;
        }
        painter.setPen(QPen(t.series[strip.lines[n].colour], 1.6, dash_of(n)));
        painter.drawPath(path);
    }
    painter.restore();

    // What it is, and the numbers at the cursor, in the colour and with the dash of their line.
    const CurvePoint here = curve_at(*curves_, cursor_);
    painter.setPen(t.ink);
    painter.setFont(text_font(0.9, true));
    painter.drawText(QRectF(room.left() + 6, room.top() - 1, room.width(), 16),
                     Qt::AlignLeft | Qt::AlignVCenter, tr("%1, %2").arg(strip.title, strip.unit));
    painter.setFont(text_font(0.9));
    const double step = std::min(16.0, room.height() / double(std::max<std::size_t>(1, strip.lines.size())));
    for (std::size_t n = 0; n < strip.lines.size(); ++n) {
        const Line& line = strip.lines[n];
        const double y = room.top() + (double(n) + 0.5) * step;
        const double x = room.right() + 8;
        painter.setPen(QPen(t.series[line.colour], 1.8, dash_of(n)));
        painter.drawLine(QPointF(x, y), QPointF(x + 18, y));
        painter.setPen(t.series[line.colour]);
        painter.drawText(QRectF(x + 23, y - 8, 72, 16), Qt::AlignLeft | Qt::AlignVCenter, line.name);
        if (const auto value = line.value(here))
            painter.drawText(QRectF(x + 78, y - 8, right_margin - 90, 16), Qt::AlignRight | Qt::AlignVCenter,
                             number_words(*value, strip.decimals));
    }
}

void CurveView::paint(QPainter& painter, QSize size) const {
    const Theme& t = theme();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRect(QPoint(0, 0), size), t.paper);
    if (!curves_ || curves_->points.size() < 2) {
        painter.setPen(t.faint_ink);
        painter.drawText(QRect(QPoint(0, 0), size), Qt::AlignCenter,
                         tr("Nothing to show: the car or the lane cannot be computed."));
        return;
    }
    const UnitSystem units = session_.project().units;
    const double wide = size.width() - left_margin - right_margin;
    const double x_cursor = left_margin + cursor_ / curves_->length * wide;
    const CurvePoint here = curve_at(*curves_, cursor_);

    // The lane takes a quarter of the height; the strips share the rest.
    const double lane_high = 0.24 * size.height(), axis_high = 20;
    const QRectF lane_room(left_margin, 30, wide, lane_high - 44);
    const LaneMap map(*track_, track_->start_line(), track_->finish_line(), lane_room);
    LaneMarks marks;
    marks.car = here;
    marks.wheel_radius = 0.5 * session_.plan().wheels[0].outer_diameter;
    painter.save();
    painter.setClipRect(QRectF(0, 0, left_margin + wide + 10, lane_high));
    paint_lane(painter, *track_, map, marks);
    painter.restore();
    painter.setFont(text_font(0.9));
    painter.setPen(t.ink);
    const double x_text = left_margin + wide + 8;
    const QStringList words{quantity_text(cursor_, Quantity::length, units),
                            quantity_text(here.time, Quantity::time, units)};
    for (int n = 0; n < words.size(); ++n)
        painter.drawText(QRectF(x_text, 24 + 18 * n, right_margin - 20, 16),
                         Qt::AlignRight | Qt::AlignVCenter, words[n]);
    if (map.stretch() < 0.98) {
        painter.setPen(t.faint_ink);
        painter.drawText(QRectF(x_text, 24 + 18 * double(words.size()), right_margin - 20, 16),
                         Qt::AlignRight | Qt::AlignVCenter,
                         tr("heights × %1").arg(number_words(map.stretch(), 2)));
    }

    const std::vector<Strip> all = strips();
    double sum = 0;
    for (const Strip& strip : all)
        sum += strip.height;
    const double room_high = size.height() - lane_high - axis_high - strip_gap * double(all.size());
    double y = lane_high;
    for (const Strip& strip : all) {
        const double high = room_high * strip.height / sum;
        paint_strip(painter, strip, QRectF(left_margin, y, wide, high));
        y += high + strip_gap;
    }
    painter.setPen(QPen(t.accent, 1.2));
    painter.drawLine(QPointF(x_cursor, lane_high), QPointF(x_cursor, y - strip_gap));
    painter.setPen(t.faint_ink);
    painter.setFont(text_font(0.85));
    painter.drawText(QRectF(left_margin, y - strip_gap + 3, wide, 16), Qt::AlignLeft, tr("start line"));
    painter.drawText(QRectF(left_margin, y - strip_gap + 3, wide, 16), Qt::AlignRight,
                     tr("finish line, %1").arg(quantity_text(curves_->length, Quantity::length, units)));
    painter.drawText(QRectF(left_margin, y - strip_gap + 3, wide, 16), Qt::AlignCenter,
                     tr("along the surface"));
}

void CurveView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    paint(painter, size());
    if (!hasFocus()) return;
    painter.setPen(QPen(theme().accent, 1.5, Qt::DotLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -2, -2));
}

void CurveView::mouseMoveEvent(QMouseEvent* event) {
    set_cursor(place_of(event->position().x()));
}

void CurveView::keyPressEvent(QKeyEvent* event) {
    if (!curves_) return QWidget::keyPressEvent(event);
    const double step = curves_->length * (event->modifiers() & Qt::ShiftModifier     ? 0.1
                                           : event->modifiers() & Qt::ControlModifier ? 0.002
                                                                                      : 0.01);
    switch (event->key()) {
    case Qt::Key_Left:
        return set_cursor(cursor_ - step);
    case Qt::Key_Right:
        return set_cursor(cursor_ + step);
    case Qt::Key_Home:
        return set_cursor(0);
    case Qt::Key_End:
        return set_cursor(curves_->length);
    default:
        QWidget::keyPressEvent(event);
    }
}

void CurveView::focusInEvent(QFocusEvent*) {
    update();
}

void CurveView::focusOutEvent(QFocusEvent*) {
    update();
}

QString CurveView::table() const {
    QString text = QStringLiteral(
        "at_m\ttime_s\tspeed_m_s\trear_load_n\tfront_load_n\tjournal_w\thub_w\trolling_w\tscrub_w\t"
        "air_w\trail_w\n");
    if (!curves_) return text;
    const auto number = [](double value) {
        if (value == 0) return QStringLiteral("0");
        return QString::fromStdString(
            format(value, Quantity::plain, UnitSystem::metric,
                   {.significant = 7, .with_unit = false, .trim = true, .ascii = true}));
    };
    for (const CurvePoint& p : curves_->points) {
        QStringList row;
        for (const double value :
             {p.at, p.time, p.speed, p.rear_load, p.front_load, p.power.journal, p.power.hub, p.power.rolling,
              p.power.scrub, p.power.air, p.power.rail.value_or(0)})
            row << number(value);
        text += row.join(QLatin1Char('\t')) + QLatin1Char('\n');
    }
    return text;
}

} // namespace rampwright::ui

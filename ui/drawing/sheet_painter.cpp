#include "drawing/paint_context.hpp"
#include "drawing/pens.hpp"
#include "look/theme.hpp"

#include <rampwright/core/constants.hpp>

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>

#include <cmath>

namespace rampwright::ui {
namespace {

struct SheetText {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::Sheet)
};

/// The steps of a ruler, m: small, middle and long strokes, and what the number beside a long one counts.
struct RulerScale {
    double small, middle, large, unit;
};

RulerScale ruler_scale(UnitSystem units, double pixels_per_metre) {
    if (units == UnitSystem::metric) {
        for (const double large : {0.01, 0.02, 0.05, 0.1})
            if (large * pixels_per_metre >= 34) return {large / 10, large / 2, large, millimetre};
        return {0.02, 0.1, 0.2, millimetre};
    }
    for (const double large : {inch / 4, inch / 2, inch, 2 * inch})
        if (large * pixels_per_metre >= 34) return {large / 8, large / 2, large, inch};
    return {inch / 2, 2 * inch, 4 * inch, inch};
}

/// One ruler: strokes from the paper's edge at every step between two model coordinates.
template <class ToPixel>
void paint_ruler(QPainter& painter, const RulerScale& scale, double from, double to, bool across, double edge,
                 ToPixel to_pixel) {
    const Theme& t = theme();
    painter.setFont(text_font(0.78));
    const QFontMetricsF metrics(painter.font());
    const auto first = static_cast<long>(std::ceil(from / scale.small));
    const auto last = static_cast<long>(std::floor(to / scale.small));
    const long per_large = std::lround(scale.large / scale.small),
               per_middle = std::lround(scale.middle / scale.small);
    for (long i = first; i <= last; ++i) {
        const double at = to_pixel(static_cast<double>(i) * scale.small);
        const bool is_large = i % per_large == 0;
        const double stroke = is_large ? 9 : i % per_middle == 0 ? 6 : 3.5;
        painter.setPen(thin_pen(t.faint_ink));
        if (across)
            painter.drawLine(QPointF(at, edge), QPointF(at, edge + stroke));
        else
            painter.drawLine(QPointF(edge, at), QPointF(edge + stroke, at));
        if (!is_large) continue;
        const QString number =
            QString::number(std::round(static_cast<double>(i) * scale.small / scale.unit * 1e4) / 1e4);
        if (across)
            painter.drawText(
                QPointF(at - metrics.horizontalAdvance(number) / 2, edge + 10 + metrics.ascent()), number);
        else
            painter.drawText(QPointF(edge + 11, at + metrics.ascent() / 2 - 1), number);
    }
}

/// The first-angle symbol of ISO 5456-2: a truncated cone, and to its right what is seen of it from the left.
void paint_projection_symbol(QPainter& painter, QPointF centre, double height) {
    painter.setPen(thin_pen(theme().faint_ink));
    painter.setBrush(Qt::NoBrush);
    const double big = height / 2, small = height / 4, length = height;
    const QPointF cone = centre - QPointF(height * 0.75, 0);
    painter.drawPolygon(QPolygonF{cone + QPointF(-length / 2, -small), cone + QPointF(length / 2, -big),
                                  cone + QPointF(length / 2, big), cone + QPointF(-length / 2, small)});
    const QPointF eye = centre + QPointF(height * 0.75, 0);
    painter.drawEllipse(eye, big, big);
    painter.drawEllipse(eye, small, small);
    painter.setPen(centre_pen(theme().faint_ink));
    painter.drawLine(cone - QPointF(length * 0.7, 0), cone + QPointF(length * 0.7, 0));
    painter.drawLine(eye - QPointF(big * 1.3, 0), eye + QPointF(big * 1.3, 0));
    painter.drawLine(eye - QPointF(0, big * 1.3), eye + QPointF(0, big * 1.3));
}

void paint_title_block(QPainter& painter, const PaintContext& context) {
    const Theme& t = theme();
    const QRectF block = title_block(context.map);
    if (block.isNull()) return;
    const QFont name_font = text_font(1.5, true), small_font = text_font(0.85);
    const QFontMetricsF name_metrics(name_font), small_metrics(small_font);
    const double line = small_metrics.height() + 2;
    painter.setPen(thin_pen(t.faint_ink));
    painter.drawRect(block);
    const double divide = block.top() + name_metrics.height() + line + 10;
    painter.drawLine(QPointF(block.left(), divide), QPointF(block.right(), divide));

    const double x = block.left() + 9, width = block.width() - 18;
    double y = block.top() + 4 + name_metrics.ascent();
    QString name = QString::fromStdString(context.plan.name);
    if (!context.plan.number.empty())
        name = SheetText::tr("%1  no. %2").arg(name, QString::fromStdString(context.plan.number));
    painter.setFont(name_font);
    painter.setPen(t.ink);
    painter.drawText(QPointF(x, y), name_metrics.elidedText(name, Qt::ElideRight, width));
    painter.setFont(small_font);
    painter.setPen(t.faint_ink);
    y += line;
    painter.drawText(QPointF(x, y), small_metrics.elidedText(QString::fromStdString(context.project.title),
                                                             Qt::ElideRight, width));
    y = divide + 4 + small_metrics.ascent();
    const double dots_per_metre = painter.device()->logicalDpiX() / inch;
    painter.drawText(
        QPointF(x, y),
        SheetText::tr("Scale %1 : 1").arg(context.map.pixels_per_metre() / dots_per_metre, 0, 'f', 2));
    y += line;
    painter.drawText(QPointF(x, y), context.project.units == UnitSystem::metric
                                        ? SheetText::tr("Rulers in mm, from the tail")
                                        : SheetText::tr("Rulers in inches, from the tail"));
    paint_projection_symbol(painter, {block.right() - 40, divide + (block.bottom() - divide) / 2}, 20);
}

void paint_view_name(QPainter& painter, QPointF at, const QString& name) {
    painter.setFont(text_font(0.85));
    painter.setPen(theme().faint_ink);
    painter.drawText(at, name);
}

} // namespace

QRectF title_block(const DrawingMap& map) {
    const QRectF paper = map.paper();
    const double right = map.frame(View::front).right() - 14, left = paper.left() + sheet::ruler + 14;
    const double line = QFontMetricsF(text_font(0.85)).height() + 2;
    const double height = QFontMetricsF(text_font(1.5, true)).height() + 3 * line + 18;
    const double top = std::max(map.frame(View::front).bottom() + 8, paper.bottom() - height - 16);
    if (right - left < 120 || top + height > paper.bottom()) return {};
    return {left, top, right - left, height};
}

void paint_sheet(QPainter& painter, const PaintContext& context) {
    const Theme& t = theme();
    const DrawingMap& map = context.map;
    const QRectF paper = map.paper();
    painter.fillRect(paper, t.paper);

    const auto scale = ruler_scale(context.project.units, map.pixels_per_metre());
    const QRectF side = map.frame(View::side), top = map.frame(View::top), front = map.frame(View::front);
    const auto x_pixel = [&](double x) { return map.plane_to_pixel(View::side, {x, 0}).x(); };
    const auto x_at = [&](double pixel) { return map.to_plane_point(View::side, {pixel, 0}).x(); };
    const auto z_pixel = [&](double z) { return map.plane_to_pixel(View::side, {0, z}).y(); };
    const auto z_at = [&](double pixel) { return map.to_plane_point(View::side, {0, pixel}).y(); };
    const auto y_pixel = [&](double y) { return map.plane_to_pixel(View::top, {0, y}).y(); };
    const auto y_at = [&](double pixel) { return map.to_plane_point(View::top, {0, pixel}).y(); };

    painter.save();
    painter.setClipRect(paper);
    const CarExtent extent = context.shape.extent();
    const double over = 5 * millimetre;
    paint_ruler(painter, scale, std::max(x_at(side.left()), extent.low.x() - over),
                std::min(x_at(paper.right()), extent.high.x() + over), true, paper.top(), x_pixel);
    paint_ruler(painter, scale, std::max(z_at(side.bottom()), extent.low.z() - over),
                std::min(z_at(paper.top() + 20), extent.high.z() + over), false, paper.left(), z_pixel);
    paint_ruler(painter, scale, std::max(y_at(paper.bottom()), extent.low.y() - over),
                std::min(y_at(top.top()), extent.high.y() + over), false, paper.left(), y_pixel);

    const double below_top = map.to_pixel(View::top, {0, extent.low.y(), 0}).y() + 22;
    const double below_ground = map.to_pixel(View::side, {0, 0, extent.low.z()}).y() + 24;
    paint_view_name(painter, {x_pixel(extent.low.x()), below_ground}, SheetText::tr("Side view"));
    paint_view_name(painter, {x_pixel(extent.low.x()), below_top}, SheetText::tr("Top view"));
    paint_view_name(painter, {map.to_pixel(View::front, extent.low).x(), below_ground},
                    SheetText::tr("Front view"));
    Q_UNUSED(front)
    paint_title_block(painter, context);
    painter.restore();

    painter.setPen(thin_pen(t.paper_edge));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(paper.adjusted(0.5, 0.5, -0.5, -0.5));
}

} // namespace rampwright::ui

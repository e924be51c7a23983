#include "drawing/outline.hpp"

#include <rampwright/body/outline.hpp>

#include <algorithm>

namespace rampwright::ui {
namespace {

QPointF point(const Eigen::Vector2d& at) {
    return {at.x(), at.y()};
}

} // namespace

QPainterPath outline_path(const std::vector<PlanPoint>& points, double length, double low, double high) {
    QPainterPath path;
    if (points.size() < 3) {
        path.addRect(QRectF(QPointF(0, low), QPointF(length, high)));
        return path;
    }
    Outline outline;
    for (const auto& each : points)
        outline.push_back({each.at, each.smooth});
    for (const OutlinePiece& piece : outline_pieces(outline)) {
        if (path.isEmpty()) path.moveTo(point(piece.control[0]));
        if (piece.straight)
            path.lineTo(point(piece.control[3]));
        else
            path.cubicTo(point(piece.control[1]), point(piece.control[2]), point(piece.control[3]));
    }
    path.closeSubpath();
    return path;
}

std::pair<double, double> span_at(const QPainterPath& outline, double x) {
    // The toolkit flattens curves for pixels: 20 of them a millimetre leave no corner that can be seen.
    constexpr double fine = 2e4;
    bool found = false;
    double low = 0, high = 0;
    const auto take = [&](double value) {
        low = found ? std::min(low, value) : value;
        high = found ? std::max(high, value) : value;
        found = true;
    };
    for (const QPolygonF& polygon : outline.toSubpathPolygons(QTransform::fromScale(fine, fine)))
        for (qsizetype i = 0; i + 1 < polygon.size(); ++i) {
            const QPointF a = polygon[i] / fine, b = polygon[i + 1] / fine;
            if (std::min(a.x(), b.x()) > x || std::max(a.x(), b.x()) < x) continue;
            if (a.x() == b.x()) {
                take(a.y());
                take(b.y());
            } else {
                take(a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x()));
            }
        }
    return {low, high};
}

} // namespace rampwright::ui

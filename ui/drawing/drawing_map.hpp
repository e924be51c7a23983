#pragma once

#include <rampwright/project/project.hpp>

#include <QPointF>
#include <QRectF>
#include <QTransform>

#include <array>
#include <optional>

namespace rampwright::ui {

/// The three views of the sheet, in first-angle projection (ISO 5456-2): the side view is seen from the
/// car's right, nose to the right; what is seen from above lies under it, what is seen from the front
/// to the left of it.
enum class View { side, top, front };
inline constexpr std::array<View, 3> all_views{View::side, View::top, View::front};
/// Place of a view in arrays by view.
constexpr std::size_t index(View view) {
    return static_cast<std::size_t>(view);
}

/// A view's plane: across and up, m. Side (x, z), top (x, y), front (y, z).
QPointF to_plane(View view, const Vec3& at);
/// The inverse; the coordinate the view looks along is taken from `depth`.
Vec3 from_plane(View view, const QPointF& plane, const Vec3& depth);
/// The car's axes that run across and up the view: 0 x, 1 y, 2 z.
std::array<int, 2> axes_of(View view);

/// The room a car takes: the box around everything drawn, m, car frame.
struct CarExtent {
    Vec3 low = Vec3::Zero(), high = Vec3::Zero();
};

/// Where on the paper a place of the car is drawn. One scale for all views; side and top view share x,
/// side and front view share z. Painting, picking and tests all go through it.
class DrawingMap {
public:
    DrawingMap() = default;

    /// The largest scale at which all views and their margins fit on `paper` (px), then magnified by
    /// `zoom` about the paper's centre and shifted by `pan` (px).
    static DrawingMap fit(const QRectF& paper, const CarExtent& extent, double zoom = 1, QPointF pan = {});

    double pixels_per_metre() const { return scale_; }
    const QRectF& paper() const { return paper_; }

    QPointF to_pixel(View view, const Vec3& at) const;
    QPointF plane_to_pixel(View view, const QPointF& plane) const;
    QPointF to_plane_point(View view, const QPointF& pixel) const;
    /// The place under a pixel; the coordinate the view looks along is taken from `depth`.
    Vec3 to_model(View view, const QPointF& pixel, const Vec3& depth) const;
    /// From a view's plane to pixels, for painter paths in metres.
    QTransform transform(View view) const;

    /// The room of a view on the paper, px; neighbours share a line between them.
    QRectF frame(View view) const { return frames_[index(view)]; }
    std::optional<View> view_at(const QPointF& pixel) const;

private:
    double scale_ = 1;
    QRectF paper_;
    std::array<QPointF, 3> origins_; ///< the pixel of each plane's (0, 0)
    std::array<QRectF, 3> frames_;
};

/// Margins of the sheet, px: rulers along the top and the left edge, room for the dimension above the side
/// view and for the scale pan below it.
namespace sheet {
inline constexpr double ruler = 26, edge = 26, above = 62, below = 64, beneath = 34, column_gap = 46;
}

} // namespace rampwright::ui

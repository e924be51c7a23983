#pragma once

#include <QColor>
#include <QPen>

/// Line types of technical drawing (ISO 128-2) at screen widths.
namespace rampwright::ui {

inline QPen outline_pen(const QColor& color, double width = 1.6) {
    return {color, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin};
}

inline QPen thin_pen(const QColor& color) {
    return {color, 1.0, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin};
}

/// Edges that something hides.
inline QPen hidden_pen(const QColor& color) {
    QPen pen(color, 1.1, Qt::CustomDashLine, Qt::FlatCap, Qt::MiterJoin);
    pen.setDashPattern({5, 3.5});
    return pen;
}

/// Axes and planes of symmetry.
inline QPen centre_pen(const QColor& color) {
    QPen pen(color, 0.9, Qt::CustomDashLine, Qt::FlatCap, Qt::MiterJoin);
    pen.setDashPattern({12, 3, 2, 3});
    return pen;
}

} // namespace rampwright::ui

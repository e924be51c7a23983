#pragma once

class QChartView;
class QValueAxis;

namespace rampwright::ui {

/// Both axes, margins and the legend as every plot has them; its marks are told by shape, not by colour
/// alone.
void lay_out_chart(QChartView& view, QValueAxis& x, QValueAxis& y);

/// Paper, ink and grid in today's theme. What is drawn on them is the plot's own.
void dress_chart(QChartView& view);

} // namespace rampwright::ui

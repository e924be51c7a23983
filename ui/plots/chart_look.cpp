#include "plots/chart_look.hpp"

#include "look/theme.hpp"

#include <QChart>
#include <QChartView>
#include <QLegend>
#include <QValueAxis>

namespace rampwright::ui {

void lay_out_chart(QChartView& view, QValueAxis& x, QValueAxis& y) {
    view.setRenderHint(QPainter::Antialiasing);
    view.setFrameShape(QFrame::NoFrame);
    QChart& chart = *view.chart();
    chart.addAxis(&x, Qt::AlignBottom);
    chart.addAxis(&y, Qt::AlignLeft);
    chart.setMargins({4, 4, 8, 4});
    chart.legend()->setAlignment(Qt::AlignTop);
    chart.legend()->setMarkerShape(QLegend::MarkerShapeFromSeries);
}

void dress_chart(QChartView& view) {
    const Theme& t = theme();
    QChart& chart = *view.chart();
    chart.setBackgroundBrush(t.paper);
    chart.legend()->setLabelColor(t.ink);
    for (QAbstractAxis* axis : chart.axes()) {
        axis->setLabelsColor(t.ink);
        axis->setTitleBrush(t.ink);
        axis->setGridLineColor(t.grid);
        axis->setLinePenColor(t.faint_ink);
        axis->setTitleFont(text_font());
        axis->setLabelsFont(text_font(0.9));
    }
}

} // namespace rampwright::ui

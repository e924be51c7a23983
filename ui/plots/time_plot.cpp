#include "plots/time_plot.hpp"

#include "look/theme.hpp"
#include "plots/chart_look.hpp"

#include <QAreaSeries>
#include <QChart>
#include <QEvent>
#include <QLineSeries>
#include <QScatterSeries>
#include <QValueAxis>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

constexpr double most_shown_ms = 40;

} // namespace

TimePlot::TimePlot(const QString& object_name, const QString& across, QWidget* parent)
    : QChartView(new QChart, parent),
      across_(across),
      line_(new QLineSeries(this)),
      flat_top_(new QLineSeries(this)),
      flat_bottom_(new QLineSeries(this)),
      best_(new QScatterSeries(this)),
      today_(new QScatterSeries(this)),
      x_(new QValueAxis(this)),
      y_(new QValueAxis(this)) {
    setObjectName(object_name);
    setAccessibleName(tr("Heat time against %1").arg(across));
    auto* flat = new QAreaSeries(flat_top_, flat_bottom_);
    flat->setName(tr("within 1 ms of the best"));
    line_->setName(tr("expected time"));
    best_->setName(tr("best"));
    best_->setMarkerShape(QScatterSeries::MarkerShapeRotatedRectangle);
    today_->setName(tr("today"));
    today_->setMarkerShape(QScatterSeries::MarkerShapeCircle);
    y_->setTitleText(tr("ms slower"));
    y_->setLabelFormat(QStringLiteral("%.0f"));
    lay_out_chart(*this, *x_, *y_);
    for (QAbstractSeries* series : std::initializer_list<QAbstractSeries*>{flat, line_, best_, today_}) {
        chart()->addSeries(series);
        series->attachAxis(x_);
        series->attachAxis(y_);
    }
    dress();
}

void TimePlot::show_curve(const Curve& curve, const QString& unit) {
    x_->setTitleText(tr("%1, %2").arg(across_, unit));
    QList<QPointF> points;
    double left = 0, right = 1, highest = 2;
    for (const QPointF& point : curve.points)
        if (std::isfinite(point.y())) points << point;
    if (!points.isEmpty()) {
        left = points.first().x();
        right = points.last().x();
        for (const QPointF& point : std::as_const(points))
            highest = std::max(highest, std::min(point.y(), most_shown_ms));
    }
    line_->replace(points);
    best_->replace(curve.best ? QList<QPointF>{*curve.best} : QList<QPointF>{});
    today_->replace(curve.today ? QList<QPointF>{*curve.today} : QList<QPointF>{});
    flat_top_->replace(
        QList<QPointF>{{curve.flat_from, curve.flat_height}, {curve.flat_to, curve.flat_height}});
    flat_bottom_->replace(QList<QPointF>{{curve.flat_from, 0}, {curve.flat_to, 0}});
    x_->setRange(left, right);
    x_->applyNiceNumbers();
    y_->setRange(0, highest);
    y_->applyNiceNumbers();
}

void TimePlot::dress() {
    const Theme& t = theme();
    dress_chart(*this);
    line_->setPen(QPen(t.accent, 2));
    QColor shade = t.good;
    shade.setAlpha(60);
    for (QAbstractSeries* series : chart()->series())
        if (auto* area = qobject_cast<QAreaSeries*>(series)) {
            area->setBrush(shade);
            area->setPen(Qt::NoPen);
        }
    for (QScatterSeries* marks : {best_, today_}) {
        marks->setMarkerSize(12);
        marks->setBorderColor(t.paper);
    }
    best_->setColor(t.good);
    today_->setColor(t.ink);
}

void TimePlot::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange) dress();
    QChartView::changeEvent(event);
}

} // namespace rampwright::ui

#include "plots/mark_plot.hpp"

#include "look/theme.hpp"
#include "plots/chart_look.hpp"

#include <QChart>
#include <QEvent>
#include <QLineSeries>
#include <QValueAxis>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

/// The axis over values from `low` to `high` with room at both ends; a point alone gets room about it.
void fit_axis(QValueAxis& axis, double low, double high) {
    const double room = high > low ? (high - low) * 0.06 : std::max(std::abs(low) * 0.05, 0.5);
    axis.setRange(low - room, high + room);
}

} // namespace

MarkPlot::MarkPlot(const QString& object_name, const std::vector<Kind>& kinds, const QString& line_name,
                   QWidget* parent)
    : QChartView(new QChart, parent), x_(new QValueAxis(this)), y_(new QValueAxis(this)) {
    setObjectName(object_name);
    lay_out_chart(*this, *x_, *y_);
    const auto add = [this](QXYSeries* series, const QString& name) {
        series->setName(name);
        chart()->addSeries(series);
        series->attachAxis(x_);
        series->attachAxis(y_);
    };
    if (!line_name.isEmpty()) add(line_ = new QLineSeries(this), line_name);
    for (const Kind& kind : kinds) {
        marks_.push_back(new QScatterSeries(this));
        marks_.back()->setMarkerShape(kind.shape);
        add(marks_.back(), kind.name);
    }
    dress();
}

void MarkPlot::show_points(const std::vector<QList<QPointF>>& points, const QString& across,
                           const QString& up, const QList<QPointF>& line) {
    setAccessibleName(tr("%1 against %2").arg(up, across));
    x_->setTitleText(across);
    y_->setTitleText(up);
    QList<QPointF> all = line;
    for (std::size_t kind = 0; kind < marks_.size(); ++kind) {
        marks_[kind]->replace(points.at(kind));
        all << points[kind];
    }
    if (line_) line_->replace(line);
    if (all.isEmpty()) return;
    const auto [left, right] =
        std::minmax_element(all.begin(), all.end(), [](QPointF a, QPointF b) { return a.x() < b.x(); });
    const auto [low, high] =
        std::minmax_element(all.begin(), all.end(), [](QPointF a, QPointF b) { return a.y() < b.y(); });
    fit_axis(*x_, left->x(), right->x());
    fit_axis(*y_, low->y(), high->y());
}

void MarkPlot::dress() {
    const Theme& t = theme();
    dress_chart(*this);
    if (line_) line_->setPen(QPen(t.accent, 2));
    for (std::size_t kind = 0; kind < marks_.size(); ++kind) {
        // A star fills its square by a third: as large as the others, it would look like a dot.
        const bool star = marks_[kind]->markerShape() == QScatterSeries::MarkerShapeStar;
        marks_[kind]->setMarkerSize(star ? 22 : 11);
        marks_[kind]->setBorderColor(t.paper);
        marks_[kind]->setColor(t.series[kind % t.series.size()]);
    }
}

void MarkPlot::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange) dress();
    QChartView::changeEvent(event);
}

} // namespace rampwright::ui

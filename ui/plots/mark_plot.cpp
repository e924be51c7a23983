#include "plots/mark_plot.hpp"

#include "look/theme.hpp"
#include "plots/chart_look.hpp"

#include <QChart>
#include <QEvent>
#include <QHelpEvent>
#include <QLineSeries>
#include <QToolTip>
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

QFont label_font() {
    return text_font(0.85);
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

void MarkPlot::show_labels(std::vector<Label> labels) {
    labels_ = std::move(labels);
    QStringList told;
    for (const Label& label : labels_)
        told << label.told;
    setAccessibleDescription(told.join(QLatin1Char('\n')));
    viewport()->update();
}

std::vector<MarkPlot::Placed> MarkPlot::placed_labels() const {
    constexpr double mark = 7, room = 3; // px, half a mark
    const QFontMetricsF metrics(label_font());
    std::vector<QRectF> taken;
    for (const QScatterSeries* series : marks_)
        for (const QPointF& point : series->points()) {
            const QPointF at = chart()->mapToPosition(point, const_cast<QScatterSeries*>(series));
            taken.emplace_back(at - QPointF(mark, mark), QSizeF(2 * mark, 2 * mark));
        }
    std::vector<Placed> placed;
    const QRectF paper = chart()->plotArea();
    for (const Label& label : labels_) {
        const QPointF at = chart()->mapToPosition(label.at, marks_.front());
        const double wide = metrics.horizontalAdvance(label.text), tall = metrics.height();
        const double off = mark + room;
        for (const QPointF corner : {QPointF(off, -tall / 2), QPointF(-off - wide, -tall / 2),
                                     QPointF(-wide / 2, -off - tall), QPointF(-wide / 2, off)}) {
            const QRectF where(at + corner, QSizeF(wide, tall));
            if (!paper.contains(where) || std::any_of(taken.begin(), taken.end(), [&](const QRectF& other) {
                    return other.intersects(where);
                }))
                continue;
            placed.push_back({where, label.text});
            taken.push_back(where);
            break;
        }
    }
    return placed;
}

void MarkPlot::drawForeground(QPainter* painter, const QRectF& rect) {
    QChartView::drawForeground(painter, rect);
    painter->setFont(label_font());
    painter->setPen(theme().ink);
    for (const Placed& label : placed_labels())
        painter->drawText(label.where, Qt::AlignCenter, label.text);
}

bool MarkPlot::viewportEvent(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QChartView::viewportEvent(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    constexpr double reach = 12; // px
    QStringList told;
    for (const Label& label : labels_)
        if (QLineF(chart()->mapToPosition(label.at, marks_.front()), help->pos()).length() < reach)
            told << label.told;
    if (told.isEmpty())
        QToolTip::hideText();
    else
        QToolTip::showText(help->globalPos(), told.join(QLatin1Char('\n')), viewport());
    return true;
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

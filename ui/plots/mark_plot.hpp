#pragma once

#include <QChartView>
#include <QPointF>
#include <QScatterSeries>
#include <QString>

#include <vector>

class QLineSeries;
class QValueAxis;

namespace rampwright::ui {

/// Points told apart by the shape of their marks and by a word, with a line through them where there is one.
class MarkPlot : public QChartView {
    Q_OBJECT

public:
    struct Kind {
        QString name;
        QScatterSeries::MarkerShape shape;
    };
    MarkPlot(const QString& object_name, const std::vector<Kind>& kinds, const QString& line_name = {},
             QWidget* parent = nullptr);

    /// One list of points for each kind, in their order; values are in the units the titles name.
    void show_points(const std::vector<QList<QPointF>>& points, const QString& across, const QString& up,
                     const QList<QPointF>& line = {});
    const QScatterSeries& marks(std::size_t kind) const { return *marks_.at(kind); }
    const QLineSeries* line() const { return line_; }

protected:
    void changeEvent(QEvent* event) override;

private:
    void dress();

    std::vector<QScatterSeries*> marks_;
    QLineSeries* line_ = nullptr;
    QValueAxis *x_, *y_;
};

} // namespace rampwright::ui

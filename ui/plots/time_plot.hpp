#pragma once

#include <QChartView>
#include <QPointF>
#include <QString>

#include <optional>
#include <vector>

class QLineSeries;
class QScatterSeries;
class QValueAxis;

namespace rampwright::ui {

/// A curve of time against one decision, with the best and today's place marked by shape and word, and the
/// stretch that is as good as the best shaded. Values are in the unit shown.
class TimePlot : public QChartView {
    Q_OBJECT

public:
    TimePlot(const QString& object_name, const QString& across, QWidget* parent = nullptr);

    struct Curve {
        std::vector<QPointF> points; ///< (decision, ms above the best)
        std::optional<QPointF> best, today;
        double flat_from = 0, flat_to = 0, flat_height = 1;
    };
    void show_curve(const Curve& curve, const QString& unit);
    QPixmap picture() { return grab(); }

protected:
    void changeEvent(QEvent* event) override;

private:
    void dress();

    QString across_;
    QLineSeries *line_, *flat_top_, *flat_bottom_;
    QScatterSeries *best_, *today_;
    QValueAxis *x_, *y_;
};

} // namespace rampwright::ui

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
    /// What a mark stands for: a short text beside it where there is room, the longer one on request.
    struct Label {
        QPointF at; ///< as shown
        QString text, told;
    };
    /// The most important first: where labels would cover a mark or each other, the later ones are left out.
    /// All are read aloud.
    void show_labels(std::vector<Label> labels);
    struct Placed {
        QRectF where; ///< in the view
        QString text;
    };
    std::vector<Placed> placed_labels() const;

    const QScatterSeries& marks(std::size_t kind) const { return *marks_.at(kind); }
    const QLineSeries* line() const { return line_; }

protected:
    void changeEvent(QEvent* event) override;
    void drawForeground(QPainter* painter, const QRectF& rect) override;
    bool viewportEvent(QEvent* event) override;

private:
    void dress();

    std::vector<QScatterSeries*> marks_;
    std::vector<Label> labels_;
    QLineSeries* line_ = nullptr;
    QValueAxis *x_, *y_;
};

} // namespace rampwright::ui

#pragma once

#include <QColor>
#include <QString>
#include <QWidget>

#include <array>
#include <vector>

namespace rampwright::ui {

/// Drawn heat times as smooth curves over one line of time, each with its mean marked and named.
class BellPlot : public QWidget {
    Q_OBJECT

public:
    explicit BellPlot(QWidget* parent = nullptr);

    struct Bell {
        QString name;
        std::vector<double> times; ///< s; those that are not finite are left out
        double mean = 0;           ///< s
        std::array<double, 2> interval95{};
        bool first = true; ///< the first car's line is solid, the second's is dashed
    };
    /// One bell or two; none clears the picture.
    void show_bells(std::vector<Bell> bells);

    QSize sizeHint() const override { return {480, 150}; }
    QSize minimumSizeHint() const override { return {240, 110}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Curve {
        Bell bell;
        std::vector<double> density; ///< at places evenly between low_ and high_, any scale
    };
    std::vector<Curve> curves_;
    double low_ = 0, high_ = 1, highest_ = 1;
};

/// The line of a car where two are compared.
QColor car_colour(bool first);

} // namespace rampwright::ui

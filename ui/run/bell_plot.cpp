#include "run/bell_plot.hpp"

#include "look/theme.hpp"

#include <rampwright/units/format.hpp>

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace rampwright::ui {
namespace {

constexpr std::size_t places = 240; ///< of a curve
constexpr double margin = 12, axis_room = 22, name_room = 18;

/// Density of the times at `places` points from low to high: counted into fine classes, then smoothed by a
/// normal kernel of the width that suits a normal sample (0.9 sigma n^(-1/5); Silverman, from memory).
std::vector<double> smooth_density(const std::vector<double>& times, double low, double high) {
    std::vector<double> counts(places, 0), density(places, 0);
    double sum = 0, squares = 0;
    std::size_t n = 0;
    for (const double time : times) {
        if (!std::isfinite(time)) continue;
        ++n;
        sum += time;
        squares += time * time;
        const double place = (time - low) / (high - low) * double(places);
        if (place >= 0 && place < double(places)) counts[std::size_t(place)] += 1;
    }
    if (n < 2) return density;
    const double mean = sum / double(n);
    const double sigma = std::sqrt(std::max(0.0, squares / double(n) - mean * mean));
    const double width = std::max(0.9 * sigma * std::pow(double(n), -0.2) / (high - low) * places, 0.5);
    const int reach = static_cast<int>(std::ceil(4 * width));
    for (int i = 0; i < int(places); ++i)
        for (int j = std::max(0, i - reach); j <= std::min(int(places) - 1, i + reach); ++j) {
            const double z = (i - j) / width;
            density[std::size_t(i)] += counts[std::size_t(j)] * std::exp(-0.5 * z * z) / width;
        }
    return density;
}

/// A step of 1, 2 or 5 that puts about `wanted` ticks on a length.
double tick_step(double length, double wanted) {
    const double raw = length / wanted, decade = std::pow(10, std::floor(std::log10(raw)));
    for (const double step : {1.0, 2.0, 5.0})
        if (raw <= step * decade) return step * decade;
    return 10 * decade;
}

} // namespace

QColor car_colour(bool first) {
    return first ? theme().accent : theme().caution;
}

BellPlot::BellPlot(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void BellPlot::show_bells(std::vector<Bell> bells) {
    curves_.clear();
    double low = 1e300, high = -1e300;
    QStringList said;
    for (const Bell& bell : bells) {
        const double beyond = 0.75 * (bell.interval95[1] - bell.interval95[0]);
        low = std::min(low, bell.interval95[0] - 0.5 * beyond);
        high = std::max(high, bell.interval95[1] + 0.5 * beyond);
        const auto seconds = [](double time) {
            return QString::fromStdString(format(time, Quantity::time, UnitSystem::metric));
        };
        said << tr("%1: around %2, 19 heats of 20 between %3 and %4")
                    .arg(bell.name, seconds(bell.mean), seconds(bell.interval95[0]),
                         seconds(bell.interval95[1]));
    }
    setAccessibleName(said.isEmpty() ? tr("Heat times, not drawn yet") : said.join(QStringLiteral("; ")));
    setToolTip(said.join(QLatin1Char('\n')));
    if (high > low) {
        low_ = low;
        high_ = high;
        highest_ = 0;
        for (Bell& bell : bells) {
            auto density = smooth_density(bell.times, low, high);
            highest_ = std::max(highest_, *std::max_element(density.begin(), density.end()));
            curves_.push_back({std::move(bell), std::move(density)});
        }
    }
    update();
}

void BellPlot::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme& t = theme();
    const QRectF room = QRectF(rect()).adjusted(margin, name_room + 4, -margin, -axis_room);
    painter.setFont(text_font(0.9));
    const QFontMetricsF metrics(painter.font());
    painter.setPen(QPen(t.faint_ink, 1));
    painter.drawLine(room.bottomLeft(), room.bottomRight());
    if (curves_.empty() || !(highest_ > 0)) return;

    const auto x_of = [&](double time) {
        return room.left() + room.width() * (time - low_) / (high_ - low_);
    };
    const double step = tick_step(high_ - low_, room.width() / 90);
    const int decimals = std::max(0, static_cast<int>(std::ceil(-std::log10(step) - 1e-9)));
    FormatOptions ticks;
    ticks.decimals = decimals;
    for (double time = std::ceil(low_ / step) * step; time <= high_; time += step) {
        const double x = x_of(time);
        painter.setPen(QPen(t.faint_ink, 1));
        painter.drawLine(QPointF(x, room.bottom()), QPointF(x, room.bottom() + 4));
        const QString label = QString::fromStdString(format(time, Quantity::time, UnitSystem::metric, ticks));
        const double wide = metrics.horizontalAdvance(label);
        if (x - wide / 2 >= 0 && x + wide / 2 <= width())
            painter.drawText(QPointF(x - wide / 2, room.bottom() + 5 + metrics.ascent()), label);
    }

    for (const Curve& curve : curves_) {
        const QColor colour = car_colour(curve.bell.first);
        QPainterPath line;
        for (std::size_t i = 0; i < places; ++i) {
            const QPointF at(room.left() + room.width() * (double(i) + 0.5) / places,
                             room.bottom() - room.height() * curve.density[i] / highest_);
            i == 0 ? line.moveTo(at) : line.lineTo(at);
        }
        QPainterPath area = line;
        area.lineTo(room.bottomRight());
        area.lineTo(room.bottomLeft());
        QColor wash = colour;
        wash.setAlpha(26);
        painter.fillPath(area, wash);
        // What holds 19 heats of 20 is washed once more.
        painter.save();
        painter.setClipRect(QRectF(QPointF(x_of(curve.bell.interval95[0]), room.top() - 2),
                                   QPointF(x_of(curve.bell.interval95[1]), room.bottom())));
        wash.setAlpha(40);
        painter.fillPath(area, wash);
        painter.restore();
        QPen pen(colour, 1.8, curve.bell.first ? Qt::SolidLine : Qt::DashLine);
        painter.setPen(pen);
        painter.drawPath(line);

        const double mean = x_of(curve.bell.mean);
        painter.drawLine(QPointF(mean, room.bottom()), QPointF(mean, room.top() - 3));
    }

    // Names stand above their means, from left to right; near each other, side by side.
    std::vector<const Curve*> by_mean;
    for (const Curve& curve : curves_)
        by_mean.push_back(&curve);
    std::sort(by_mean.begin(), by_mean.end(),
              [](const Curve* a, const Curve* b) { return a->bell.mean < b->bell.mean; });
    double name_end = 0;
    for (const Curve* curve : by_mean) {
        const double wide = metrics.horizontalAdvance(curve->bell.name);
        const double ideal =
            x_of(curve->bell.mean) - (curve == by_mean.front() && by_mean.size() > 1 ? wide : wide / 2);
        const double x = std::clamp(std::max(ideal, name_end), 2.0, std::max(2.0, width() - wide - 2));
        name_end = x + wide + 10;
        painter.setPen(t.ink);
        painter.drawText(QPointF(x, name_room - 4), curve->bell.name);
        painter.fillRect(QRectF(x, name_room - 1, wide, 2), car_colour(curve->bell.first));
    }
}

} // namespace rampwright::ui

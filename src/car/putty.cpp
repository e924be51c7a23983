#include "car/car_parts.hpp"

#include <rampwright/core/constants.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace rampwright {

namespace {

/// A thin upright column of the cavity: its place, the area it stands on and where it is hollow.
struct Column {
    Vec2 at;
    double area = 0;
    Interval hollow;
};

/// Gauss and Legendre's eight points on [-1, 1] (Abramowitz and Stegun, table 25.4).
constexpr std::array<double, 8> nodes{-0.960289856497536, -0.796666477413627, -0.525532409916329,
                                      -0.183434642495650, 0.183434642495650,  0.525532409916329,
                                      0.796666477413627,  0.960289856497536};
constexpr std::array<double, 8> weights{0.101228536290376, 0.222381034453374, 0.313706645877887,
                                        0.362683783378362, 0.362683783378362, 0.313706645877887,
                                        0.222381034453374, 0.101228536290376};

void add_pocket(const CutPlan& cut, std::vector<Column>& columns) {
    const Vec3 low = cut.from.cwiseMin(cut.to), half = (cut.from - cut.to).cwiseAbs() / 2;
    for (std::size_t i = 0; i < nodes.size(); ++i)
        for (std::size_t j = 0; j < nodes.size(); ++j)
            columns.push_back({{low.x() + half.x() * (1 + nodes[i]), low.y() + half.y() * (1 + nodes[j])},
                               half.x() * half.y() * weights[i] * weights[j],
                               {low.z(), low.z() + 2 * half.z()}});
}

/// An upright bore: rings of equal steps around its axis.
void add_upright_bore(const CutPlan& cut, std::vector<Column>& columns) {
    constexpr int around = 16;
    const double radius = cut.diameter / 2;
    const Interval hollow{std::min(cut.from.z(), cut.to.z()), std::max(cut.from.z(), cut.to.z())};
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        const double r = radius * (1 + nodes[i]) / 2;
        for (int k = 0; k < around; ++k) {
            const double angle = 2 * std::numbers::pi * (k + 0.5) / around;
            columns.push_back({{cut.from.x() + r * std::cos(angle), cut.from.y() + r * std::sin(angle)},
                               r * radius / 2 * weights[i] * 2 * std::numbers::pi / around,
                               hollow});
        }
    }
}

/// A bore that lies, or leans: along its length by equal weights of Gauss, across it by those of Chebyshev,
/// whose points suit the round. A leaning bore's ends are taken as upright.
void add_lying_bore(const CutPlan& cut, std::vector<Column>& columns) {
    constexpr int across = 12;
    const Vec3 axis = cut.to - cut.from;
    const Vec2 ground(axis.x(), axis.y());
    const Vec2 aside = Vec2(-axis.y(), axis.x()) / ground.norm();
    const double lean = axis.norm() / ground.norm(); // an upright cut through the bore is higher by this
    const double radius = cut.diameter / 2;
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        const Vec3 middle = cut.from + (1 + nodes[i]) / 2 * axis;
        for (int k = 1; k <= across; ++k) {
            const double angle = k * std::numbers::pi / (across + 1);
            const double half = radius * std::sin(angle) * lean;
            const double width = radius * std::sin(angle) * std::numbers::pi / (across + 1);
            const Vec2 at = Vec2(middle.x(), middle.y()) + radius * std::cos(angle) * aside;
            columns.push_back(
                {at, ground.norm() / 2 * weights[i] * width, {middle.z() - half, middle.z() + half}});
        }
    }
}

/// The cut's columns as far as they lie within the wood's outlines.
std::vector<Column> columns_of(const CutPlan& cut, const BodyOutlines& outlines) {
    std::vector<Column> columns;
    const Vec3 axis = cut.to - cut.from;
    if (!cut.is_bore)
        add_pocket(cut, columns);
    else if (std::hypot(axis.x(), axis.y()) < 1e-6 * std::abs(axis.z()))
        add_upright_bore(cut, columns);
    else
        add_lying_bore(cut, columns);

    std::vector<Column> inside;
    for (const Column& column : columns) {
        const std::vector<Interval> plan = outlines.plan.section(column.at.x());
        const bool within = std::any_of(plan.begin(), plan.end(), [&](const Interval& y) {
            return y.low <= column.at.y() && column.at.y() <= y.high;
        });
        if (!within) continue;
        for (const Interval& wood : outlines.profile.section(column.at.x())) {
            const Interval hollow{std::max(column.hollow.low, wood.low),
                                  std::min(column.hollow.high, wood.high)};
            if (hollow.low < hollow.high) inside.push_back({column.at, column.area, hollow});
        }
    }
    return inside;
}

double filled_height(const Column& column, double level) {
    return std::clamp(level, column.hollow.low, column.hollow.high) - column.hollow.low;
}

double volume_below(const std::vector<Column>& columns, double level) {
    double sum = 0;
    for (const Column& column : columns)
        sum += column.area * filled_height(column, level);
    return sum;
}

double find_level(const std::vector<Column>& columns, double volume) {
    double low = std::numeric_limits<double>::infinity(), high = -low;
    for (const Column& column : columns) {
        low = std::min(low, column.hollow.low);
        high = std::max(high, column.hollow.high);
    }
    for (int i = 0; i < 60; ++i) { // halves a cavity of a metre to less than rounding
        const double middle = (low + high) / 2;
        (volume_below(columns, middle) < volume ? low : high) = middle;
    }
    return high;
}

} // namespace

PuttyFill fill_with_putty(const BallastPlan& putty, const CutPlan& cut, const BodyOutlines& outlines) {
    PuttyFill fill;
    fill.volume = putty.mass / putty_density(putty.material);
    const std::vector<Column> columns = columns_of(cut, outlines);
    if (columns.empty()) { // a cut beside the wood holds nothing: a point in its middle
        fill.properties = {putty.mass, (cut.from + cut.to) / 2, Eigen::Matrix3d::Zero()};
        return fill;
    }
    fill.capacity = volume_below(columns, std::numeric_limits<double>::infinity());
    fill.level = find_level(columns, fill.volume);

    Moments moments;
    for (const Column& column : columns) {
        const double height = filled_height(column, fill.level), volume = column.area * height;
        const Vec3 centre(column.at.x(), column.at.y(), column.hollow.low + height / 2);
        moments.volume += volume;
        moments.first += volume * centre;
        moments.second += volume * centre * centre.transpose();
        moments.second(2, 2) += volume * height * height / 12;
    }
    // What does not fit still weighs: then the cavity is full and the putty counts as denser.
    fill.properties = with_density(moments, putty.mass / moments.volume);
    return fill;
}

} // namespace rampwright

#include "body/region.hpp"

#include "body/adaptive.hpp"

#include <Eigen/Geometry>

#include <algorithm>

namespace rampwright::body_detail {

namespace {

using Eigen::Vector3d;

/// The sections of a region, in a frame at the base's middle whose unit is the base's half diagonal.
class Slicer {
public:
    Slicer(const Region& region, const Vector3d& origin, double unit)
        : stock_(region.stock), origin_(origin), unit_(unit), fixed_(1 + region.within.size()) {
        solids_.push_back(region.base.in_frame(origin, unit));
        for (const auto& c : region.within)
            solids_.push_back(c.in_frame(origin, unit));
        for (const auto& c : region.any_of)
            solids_.push_back(c.in_frame(origin, unit));
        sections_.resize(solids_.size() + 1);
    }

    const std::vector<Convex>& solids() const { return solids_; }
    std::uint64_t signature() const { return signature_; }

    Section6 operator()(double x) {
        Section6 sum{};
        signature_ = 1469598103934665603u;
        for (size_t i = 0; i < solids_.size(); ++i) {
            sections_[i] = solids_[i].section(x);
            if (i < fixed_ && sections_[i].empty()) return sum;
        }
        if (!stock_) {
            add_rectangle(false, sum);
            return sum;
        }
        stock_->section(origin_.x() + unit_ * x, rectangles_);
        for (const auto& r : rectangles_) {
            sections_.back() = r.section(origin_.y(), origin_.z(), unit_);
            add_rectangle(true, sum);
        }
        return sum;
    }

private:
    struct Arc {
        int id; ///< 2 x limit + upper branch, counted through all sections
        double from, sign;
    };

    void mark(std::uint64_t v) { signature_ = (signature_ ^ v) * 1099511628211u; }

    const Limit& limit(int id) const { return sections_[id / 12].limits[id % 12 / 2]; }

    /// What the sections in hand have in common, the last one (a rectangle of the stock) if `with_stock`.
    void add_rectangle(bool with_stock, Section6& sum) {
        const size_t n = solids_.size();
        double low = -endless, high = endless;
        const auto common = [&](const Section& s) {
            low = std::max(low, s.y0);
            high = std::min(high, s.y1);
        };
        for (size_t i = 0; i < fixed_; ++i)
            common(sections_[i]);
        if (with_stock) common(sections_[n]);
        if (!(high > low)) return;
        find_breaks(with_stock, low, high);
        open_.clear();
        double from = low;
        for (const double to : breaks_) {
            if (to - from < 1e-14) continue;
            find_arcs(0.5 * (from + to), with_stock);
            close(from, sum);
            for (const auto& arc : active_)
                if (std::none_of(open_.begin(), open_.end(), [&](auto& o) { return o.id == arc.id; })) {
                    open_.push_back({arc.id, from, arc.sign});
                    mark(static_cast<std::uint64_t>(4 * arc.id + (arc.sign > 0)));
                }
            from = to;
        }
        active_.clear();
        close(from, sum);
    }

    /// Integrates the open arcs that are no longer active.
    void close(double at, Section6& sum) {
        std::erase_if(open_, [&](const Arc& arc) {
            for (const auto& a : active_)
                if (a.id == arc.id && a.sign == arc.sign) return false;
            add_under(limit(arc.id).curve, arc.id % 2, arc.from, at, arc.sign, sum);
            mark(static_cast<std::uint64_t>(4 * arc.id + 2));
            return true;
        });
    }

    void find_breaks(bool with_stock, double low, double high) {
        breaks_.clear();
        const auto add = [&](double y) {
            if (y > low && y < high) breaks_.push_back(y);
        };
        limits_.clear();
        const size_t count = sections_.size() - (with_stock ? 0 : 1);
        for (size_t i = 0; i < count; ++i) {
            const Section& s = sections_[i];
            if (s.empty()) continue;
            add(s.y0);
            add(s.y1);
            for (int k = 0; k < s.count; ++k) {
                const Limit& l = s.limits[k];
                add(l.from);
                add(l.to);
                add(l.curve.root_low);
                add(l.curve.root_high);
                const double from = std::max({low, s.y0, l.from}), to = std::min({high, s.y1, l.to});
                if (from < to) limits_.push_back({&l, from, to});
            }
        }
        for (size_t i = 0; i < limits_.size(); ++i)
            for (size_t j = i + 1; j < limits_.size(); ++j) {
                const double from = std::max(limits_[i].from, limits_[j].from);
                const double to = std::min(limits_[i].to, limits_[j].to);
                if (!(from < to)) continue;
                const auto met = meetings(limits_[i].limit->curve, limits_[j].limit->curve, from, to);
                for (int k = 0; k < met.count; ++k)
                    add(met.y[k]);
            }
        breaks_.push_back(high);
        std::sort(breaks_.begin(), breaks_.end());
    }

    void find_arcs(double y, bool with_stock) {
        active_.clear();
        Reach all;
        const auto narrow = [&](size_t i) {
            const Reach one = sections_[i].at(y);
            if (one.low > all.low) {
                all.low = one.low;
                all.low_by = static_cast<int>(12 * i) + one.low_by;
            }
            if (one.high < all.high) {
                all.high = one.high;
                all.high_by = static_cast<int>(12 * i) + one.high_by;
            }
        };
        for (size_t i = 0; i < fixed_; ++i)
            narrow(i);
        if (with_stock) narrow(solids_.size());
        if (all.empty()) return;
        if (fixed_ == solids_.size()) {
            add_arc(all);
            return;
        }
        reaches_.clear();
        for (size_t i = fixed_; i < solids_.size(); ++i) {
            if (sections_[i].empty()) continue;
            Reach one = sections_[i].at(y);
            if (one.empty()) continue;
            one.low_by += static_cast<int>(12 * i);
            one.high_by += static_cast<int>(12 * i);
            if (one.low <= all.low) {
                one.low = all.low;
                one.low_by = all.low_by;
            }
            if (one.high >= all.high) {
                one.high = all.high;
                one.high_by = all.high_by;
            }
            if (!one.empty()) reaches_.push_back(one);
        }
        std::sort(reaches_.begin(), reaches_.end(), [](auto& a, auto& b) { return a.low < b.low; });
        for (size_t i = 0; i < reaches_.size();) {
            Reach merged = reaches_[i++];
            for (; i < reaches_.size() && reaches_[i].low <= merged.high; ++i)
                if (reaches_[i].high > merged.high) {
                    merged.high = reaches_[i].high;
                    merged.high_by = reaches_[i].high_by;
                }
            add_arc(merged);
        }
    }

    void add_arc(const Reach& reach) {
        active_.push_back({reach.high_by, 0, 1});
        active_.push_back({reach.low_by, 0, -1});
    }

    struct Stretch {
        const Limit* limit;
        double from, to;
    };

    const Stock* stock_;
    Vector3d origin_;
    double unit_;
    size_t fixed_; ///< the base and those it must lie within come first among the solids
    std::vector<Convex> solids_;
    std::vector<Section> sections_; ///< of each solid, then of one rectangle of the stock
    std::vector<Rectangle> rectangles_;
    std::vector<double> breaks_;
    std::vector<Stretch> limits_;
    std::vector<Reach> reaches_;
    std::vector<Arc> active_, open_;
    std::uint64_t signature_ = 0;
};

/// Straight lines of the x-y or the x-z plane, as value = at0 + slope x on [x0, x1].
struct Line {
    double x0, x1, at0, slope;
};

void add_line_crossings(const std::vector<Line>& lines, std::vector<Event>& events) {
    for (size_t i = 0; i < lines.size(); ++i)
        for (size_t j = i + 1; j < lines.size(); ++j) {
            const double slope = lines[i].slope - lines[j].slope;
            if (slope == 0) continue;
            const double x = (lines[j].at0 - lines[i].at0) / slope;
            if (x > std::max(lines[i].x0, lines[j].x0) && x < std::min(lines[i].x1, lines[j].x1))
                events.push_back({x, false});
        }
}

/// Where upright or level flat faces of blocks and stock change their order.
void add_flat_events(const std::vector<Convex>& solids, const Stock* stock, const Vector3d& origin,
                     double unit, std::vector<Event>& events) {
    std::vector<Line> ys, zs;
    for (const auto& solid : solids) {
        const auto* b = std::get_if<Block>(&solid.shape());
        if (!b) continue;
        const auto box = solid.bounds();
        const double x0 = box.min().x(), x1 = box.max().x(), c = b->along.x(), n = b->along.y();
        for (const double side : {-1., 1.}) {
            zs.push_back({x0, x1, b->centre.z() + side * b->half.z(), 0});
            // dx c + dy n = side half.x; -dx n + dy c = side half.y
            if (n != 0)
                ys.push_back({x0, x1, b->centre.y() + (side * b->half.x() + b->centre.x() * c) / n, -c / n});
            if (c != 0)
                ys.push_back({x0, x1, b->centre.y() + (side * b->half.y() - b->centre.x() * n) / c, n / c});
        }
    }
    if (stock) {
        const auto add = [&](const Strips& strips, double centre, std::vector<Line>& lines) {
            for (const auto& e : strips.edges()) {
                if (!e.straight) continue;
                const double at = (e.at0 + e.slope * (origin.x() - e.x0) - centre) / unit;
                lines.push_back({(e.x0 - origin.x()) / unit, (e.x1 - origin.x()) / unit, at, e.slope});
            }
        };
        add(stock->profile(), origin.z(), zs);
        add(stock->plan(), origin.y(), ys);
        for (const auto& e : stock->events())
            events.push_back({(e.x - origin.x()) / unit, e.sharp});
    }
    add_line_crossings(ys, events);
    add_line_crossings(zs, events);
}

} // namespace

Moments integrate(const Region& region) {
    auto box = region.base.bounds();
    const Vector3d origin = box.center();
    const double unit = 0.5 * box.diagonal().norm();
    const Moments whole = region.base.moments();
    if (!(whole.volume > 0) || !(unit > 0)) return {};
    for (const auto& c : region.within)
        box = box.intersection(c.bounds());
    if (!region.any_of.empty()) {
        Eigen::AlignedBox3d any;
        for (const auto& c : region.any_of)
            any.extend(c.bounds());
        box = box.intersection(any);
    }
    double x0 = (box.min().x() - origin.x()) / unit, x1 = (box.max().x() - origin.x()) / unit;
    if (box.isEmpty()) return {};
    if (region.stock) {
        x0 = std::max(x0, (region.stock->profile().strips().front().x0 - origin.x()) / unit);
        x1 = std::min(x1, (region.stock->profile().strips().back().x1 - origin.x()) / unit);
    }
    if (!(x1 > x0)) return {};
    Slicer slicer(region, origin, unit);
    std::vector<Event> events;
    bool flat = !region.stock || (region.stock->straight() && !region.stock->rounded());
    for (const auto& solid : slicer.solids()) {
        solid.add_events(events);
        flat &= solid.boxy();
    }
    add_flat_events(slicer.solids(), region.stock, origin, unit, events);
    // Where curved surfaces meet one another the section may change its kind twice between two samples; short
    // stretches bound what such a change can hide.
    if (!flat && slicer.solids().size() > 1)
        for (int i = 1; i < 16; ++i)
            events.push_back({x0 + (x1 - x0) * i / 16, false});
    Accuracy accuracy;
    accuracy.volume = whole.volume / (unit * unit * unit);
    AlongX along(slicer, accuracy);
    return from_frame(along(std::move(events), x0, x1, flat ? Method::polynomial : Method::adaptive), origin,
                      unit);
}

} // namespace rampwright::body_detail

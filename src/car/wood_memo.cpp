#include <rampwright/car/wood_memo.hpp>

#include <algorithm>

namespace rampwright {

namespace {

/// A project has a handful of cars, and a change of one asks after it before and after.
constexpr std::size_t most_entries = 8;

bool same(const Outline& a, const Outline& b) {
    return std::equal(
        a.begin(), a.end(), b.begin(), b.end(),
        [](const OutlinePoint& p, const OutlinePoint& q) { return p.at == q.at && p.smooth == q.smooth; });
}

bool same(const Cut& a, const Cut& b) {
    if (a.index() != b.index()) return false;
    if (const auto* pocket = std::get_if<Pocket>(&a)) {
        const auto& other = std::get<Pocket>(b);
        return pocket->low == other.low && pocket->high == other.high;
    }
    const auto &bore = std::get<Bore>(a), &other = std::get<Bore>(b);
    return bore.from == other.from && bore.to == other.to && bore.diameter == other.diameter &&
           bore.pointed == other.pointed;
}

bool same(const BodyShape& a, const BodyShape& b) {
    return a.edge_radius == b.edge_radius && same(a.profile, b.profile) && same(a.plan, b.plan) &&
           std::equal(a.cuts.begin(), a.cuts.end(), b.cuts.begin(), b.cuts.end(),
                      [](const Cut& p, const Cut& q) { return same(p, q); });
}

} // namespace

WoodMemo::Entry& WoodMemo::entry(const BodyShape& shape) {
    const auto found =
        std::find_if(entries_.begin(), entries_.end(), [&](const Entry& e) { return same(e.shape, shape); });
    if (found != entries_.end()) {
        entries_.splice(entries_.begin(), entries_, found);
        return entries_.front();
    }
    entries_.push_front({shape, {}, {}});
    if (entries_.size() > most_entries) entries_.pop_back();
    return entries_.front();
}

const BodyMeasure& WoodMemo::measure(const BodyShape& shape) {
    Entry& kept = entry(shape);
    if (!kept.measure) kept.measure = rampwright::measure(shape);
    return *kept.measure;
}

const std::vector<Wall>& WoodMemo::walls(const BodyShape& shape) {
    Entry& kept = entry(shape);
    if (!kept.walls) kept.walls = rampwright::walls(shape);
    return *kept.walls;
}

} // namespace rampwright

#include <rampwright/heat/replay.hpp>

#include <algorithm>

namespace rampwright {

double place_at(const HeatResult& heat, double time) {
    const std::vector<HeatPoint>& trace = heat.trace;
    if (trace.empty() || time <= trace.front().time) return 0;
    if (time >= trace.back().time) return heat.reached;
    const auto after = std::upper_bound(trace.begin(), trace.end(), time,
                                        [](double t, const HeatPoint& point) { return t < point.time; });
    const HeatPoint &a = *(after - 1), &b = *after;
    const double step = b.time - a.time;
    if (!(step > 0)) return b.at;
    const double x = (time - a.time) / step;
    const double rise = b.at - a.at;
    const double from = a.speed * step, to = b.speed * step;
    return a.at + x * (from + x * (3 * rise - 2 * from - to + x * (from + to - 2 * rise)));
}

double gap_at_finish(const HeatResult& first, const HeatResult& second) {
    const auto behind = [](const HeatResult& slower, const HeatResult& faster) {
        return faster.reached - place_at(slower, faster.time);
    };
    if (first.finished && (!second.finished || first.time <= second.time)) return behind(second, first);
    if (second.finished) return -behind(first, second);
    return 0;
}

} // namespace rampwright

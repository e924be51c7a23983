#include "share_out.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/heat/replay.hpp>
#include <rampwright/study/draws.hpp>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>
#include <numbers>
#include <set>

namespace rampwright {

namespace {

std::uint64_t mixed(std::uint64_t x) {
    x += 0x9e3779b97f4a7c15ULL;
    x = (x ^ (x >> 30)) * 0xbf58476d1ce4e5b9ULL;
    x = (x ^ (x >> 27)) * 0x94d049bb133111ebULL;
    return x ^ (x >> 31);
}

/// Uniform in (0, 1).
double uniform(std::uint64_t bits) {
    return (double(bits >> 11) + 0.5) * 0x1p-53;
}

/// Of the whole time that the draws take; the shares take the rest.
constexpr double draws_part = 0.9;

/// A car's inputs with the stream each is drawn from.
struct DrawnCar {
    HeatCase nominal;
    std::vector<Input> inputs;
    std::vector<std::uint64_t> streams;
    std::uint64_t scatter_stream = 0;
    bool own_track = false; ///< an input changes the lane: no two draws share it
};

std::vector<DrawnCar> prepare_cars(const Project& project, const std::vector<std::size_t>& cars) {
    std::vector<DrawnCar> result;
    for (std::size_t place = 0; place < cars.size(); ++place) {
        DrawnCar car;
        car.nominal = make_case(project, cars[place]);
        car.inputs = list_inputs(project, car.nominal);
        const std::string own = "#" + std::to_string(place);
        for (const Input& input : car.inputs)
            car.streams.push_back(stream_of(input.scope == Scope::shared ? input.key : input.key + own));
        car.scatter_stream = stream_of("run_scatter" + own);
        car.own_track = std::any_of(car.inputs.begin(), car.inputs.end(),
                                    [](const Input& input) { return input.changes_track; });
        result.push_back(std::move(car));
    }
    return result;
}

/// @param varied room for the drawn case. It is laid anew from the nominal one each time: setting a value
/// back
///        leaves rounding behind, and a draw may not depend on the draws before it.
void draw_one(const DrawnCar& car, HeatCase& varied, const std::shared_ptr<const Track>& track,
              std::uint64_t seed, std::size_t draw, CarDraws& out) {
    varied = car.nominal;
    for (std::size_t n = 0; n < car.inputs.size(); ++n)
        car.inputs[n].set(varied, car.inputs[n].at(standard_normal(seed, draw, car.streams[n])));
    std::optional<double> time;
    try {
        time = clock_time(varied, car.own_track ? nullptr : track);
    } catch (const Problem&) {
        // A drawn car that cannot stand on its wheels does not finish.
    }
    static const std::uint64_t clock_stream = stream_of("clock_offset");
    const double clock = varied.track.clock_offset.sigma * standard_normal(seed, draw, clock_stream);
    const double scatter = varied.track.run_scatter * standard_normal(seed, draw, car.scatter_stream);
    out.expected[draw] = time ? *time + clock : std::numeric_limits<double>::infinity();
    out.heat[draw] = out.expected[draw] + scatter;
}

/// Every car's shares, one input at a time, so that the threads have them to share out.
bool find_shares(const std::vector<DrawnCar>& cars, Draws& draws, const DrawSettings& settings) {
    struct Wanted {
        std::size_t car;
        std::string key;
        std::uint64_t stream;
        Share found;
    };
    std::vector<Wanted> wanted;
    struct Sample {
        std::vector<std::size_t> draws; ///< those that finish: an infinite time has no variance
        std::vector<double> y;
    };
    std::vector<Sample> samples(cars.size());
    for (std::size_t n = 0; n < cars.size(); ++n) {
        const std::vector<double>& heat = draws.cars[n].heat;
        for (std::size_t draw = 0; draw < heat.size(); ++draw)
            if (std::isfinite(heat[draw])) {
                samples[n].draws.push_back(draw);
                samples[n].y.push_back(heat[draw]);
            }
        const DrawnCar& car = cars[n];
        // Inputs of one name, the four axles, are drawn as one.
        std::set<std::uint64_t> seen;
        for (std::size_t i = 0; i < car.inputs.size(); ++i)
            if (seen.insert(car.streams[i]).second)
                wanted.push_back({n, car.inputs[i].key, car.streams[i], {}});
        if (car.nominal.track.clock_offset.sigma > 0)
            wanted.push_back({n, "clock_offset", stream_of("clock_offset"), {}});
        if (car.nominal.track.run_scatter > 0) wanted.push_back({n, "run_scatter", car.scatter_stream, {}});
    }
    const auto work = [&](std::size_t from, std::size_t to) {
        std::vector<double> z;
        for (std::size_t i = from; i < to; ++i) {
            Wanted& each = wanted[i];
            const Sample& sample = samples[each.car];
            z.clear();
            for (std::size_t draw : sample.draws)
                z.push_back(standard_normal(settings.seed, draw, each.stream));
            const SobolIndex index = first_order_index(z, sample.y);
            each.found = {each.key, index.value, index.standard_error};
        }
    };
    const auto keep_going = [&](double part) {
        return !settings.keep_going || settings.keep_going(draws_part + (1 - draws_part) * part);
    };
    if (!share_out(wanted.size(), 1, settings.threads, keep_going, [&] { return work; })) return false;
    for (Wanted& each : wanted)
        draws.cars[each.car].shares.push_back(std::move(each.found));
    for (CarDraws& car : draws.cars)
        std::stable_sort(car.shares.begin(), car.shares.end(),
                         [](const Share& a, const Share& b) { return a.share > b.share; });
    return true;
}

double sample_mean(const std::vector<double>& values) {
    double sum = 0;
    for (double value : values)
        sum += value;
    return sum / double(values.size());
}

double sample_sigma(const std::vector<double>& values) {
    const double mean = sample_mean(values);
    double sum = 0;
    for (double value : values)
        sum += (value - mean) * (value - mean);
    return values.size() > 1 ? std::sqrt(sum / double(values.size() - 1)) : 0;
}

} // namespace

double standard_normal(std::uint64_t seed, std::uint64_t draw, std::uint64_t stream) {
    const std::uint64_t key = mixed(mixed(mixed(seed) ^ draw) ^ stream);
    const double radius = std::sqrt(-2 * std::log(uniform(key)));
    return radius * std::cos(2 * std::numbers::pi * uniform(mixed(key)));
}

std::uint64_t stream_of(std::string_view name) {
    std::uint64_t hash = 0xcbf29ce484222325ULL;
    for (char c : name)
        hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3ULL;
    return hash;
}

Draws run_draws(const Project& project, const std::vector<std::size_t>& cars, const DrawSettings& settings) {
    const std::vector<DrawnCar> prepared = prepare_cars(project, cars);
    const auto track = std::make_shared<const Track>(project.track);
    // Problems of the nominal cars are told before anything is drawn.
    for (const DrawnCar& car : prepared)
        (void)make_ready(car.nominal, track);

    Draws draws;
    draws.cars.resize(cars.size());
    for (CarDraws& car : draws.cars) {
        car.expected.resize(settings.draws);
        car.heat.resize(settings.draws);
    }
    constexpr std::size_t chunk = 32;
    const auto make_work = [&] {
        return [&, own = std::vector<HeatCase>(prepared.size())](std::size_t from, std::size_t to) mutable {
            for (std::size_t draw = from; draw < to; ++draw)
                for (std::size_t car = 0; car < own.size(); ++car)
                    draw_one(prepared[car], own[car], track, settings.seed, draw, draws.cars[car]);
        };
    };
    const auto keep_going = [&](double part) {
        return !settings.keep_going || settings.keep_going(draws_part * part);
    };
    draws.cancelled = !share_out(settings.draws, chunk, settings.threads, keep_going, make_work) ||
                      !find_shares(prepared, draws, settings);
    return draws;
}

DrawnHeat summarise(const CarDraws& draws) {
    std::vector<double> times;
    std::copy_if(draws.heat.begin(), draws.heat.end(), std::back_inserter(times),
                 [](double time) { return std::isfinite(time); });
    DrawnHeat heat;
    heat.stopped = draws.heat.size() - times.size();
    if (times.empty()) return heat;
    std::sort(times.begin(), times.end());
    heat.mean = sample_mean(times);
    heat.sigma = sample_sigma(times);
    const auto quantile = [&](double part) {
        const double place = part * double(times.size() - 1);
        const std::size_t below = std::size_t(place);
        const std::size_t above = std::min(below + 1, times.size() - 1);
        return times[below] + (place - double(below)) * (times[above] - times[below]);
    };
    heat.interval95 = {quantile(0.025), quantile(0.975)};
    return heat;
}

Figures with_draws(Figures figures, const CarDraws& draws) {
    figures.drawn = true;
    figures.shares = draws.shares;
    const DrawnHeat heat = summarise(draws);
    // A spread over the heats that finish would be too narrow where some do not.
    if (draws.heat.empty() || !figures.heat.time || heat.stopped > 0) return figures;
    figures.heat.sigma = heat.sigma;
    figures.heat.interval95 = heat.interval95;
    return figures;
}

Versus compare(const Project& project, std::size_t first, std::size_t second, const DrawSettings& settings) {
    return compare(project, first, second, run_draws(project, {first, second}, settings), settings.seed);
}

Versus compare(const Project& project, std::size_t first, std::size_t second, const Draws& draws,
               std::uint64_t seed) {
    const CarDraws &a = draws.cars[0], &b = draws.cars[1];
    Versus versus;
    versus.draws = a.heat.size();
    versus.seed = seed;
    std::vector<double> gaps;
    for (std::size_t n = 0; n < versus.draws; ++n) {
        const auto half = [](double x, double y) { return x < y ? 1.0 : x > y ? 0.0 : 0.5; };
        versus.first_wins += half(a.heat[n], b.heat[n]);
        versus.first_better += half(a.expected[n], b.expected[n]);
        const double gap = b.expected[n] - a.expected[n];
        if (std::isfinite(gap)) gaps.push_back(gap);
    }
    versus.first_wins /= double(versus.draws);
    versus.first_better /= double(versus.draws);
    if (!gaps.empty()) {
        versus.mean_gap = sample_mean(gaps);
        versus.sigma_gap = sample_sigma(gaps);
    }
    const auto nominal = [&](std::size_t car) {
        const ReadyHeat ready = make_ready(make_case(project, car));
        return run_heat(ready.course, ready.car, HeatDetail::trace);
    };
    versus.gap_at_finish = gap_at_finish(nominal(first), nominal(second));
    return versus;
}

} // namespace rampwright

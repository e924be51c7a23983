#include <rampwright/core/problem.hpp>
#include <rampwright/heat/replay.hpp>
#include <rampwright/study/draws.hpp>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cmath>
#include <condition_variable>
#include <limits>
#include <mutex>
#include <numbers>
#include <thread>

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

std::vector<Share> find_shares(const DrawnCar& car, const CarDraws& draws, std::uint64_t seed) {
    // Over the heats that finish: an infinite time has no variance.
    std::vector<std::size_t> finished;
    std::vector<double> y;
    for (std::size_t n = 0; n < draws.heat.size(); ++n)
        if (std::isfinite(draws.heat[n])) {
            finished.push_back(n);
            y.push_back(draws.heat[n]);
        }
    std::vector<Share> shares;
    const auto add = [&](const std::string& key, std::uint64_t stream) {
        std::vector<double> z;
        z.reserve(finished.size());
        for (std::size_t n : finished)
            z.push_back(standard_normal(seed, n, stream));
        const SobolIndex index = first_order_index(z, y);
        shares.push_back({key, index.value, index.standard_error});
    };
    for (std::size_t n = 0; n < car.inputs.size(); ++n)
        add(car.inputs[n].key, car.streams[n]);
    if (car.nominal.track.clock_offset.sigma > 0) add("clock_offset", stream_of("clock_offset"));
    if (car.nominal.track.run_scatter > 0) add("run_scatter", car.scatter_stream);
    std::stable_sort(shares.begin(), shares.end(),
                     [](const Share& a, const Share& b) { return a.share > b.share; });
    return shares;
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
    std::atomic<std::size_t> next{0};
    std::atomic<bool> stop{false};
    const auto work = [&] {
        std::vector<HeatCase> own(prepared.size());
        for (std::size_t from; !stop && (from = next.fetch_add(chunk)) < settings.draws;)
            for (std::size_t draw = from; draw < std::min(from + chunk, settings.draws) && !stop; ++draw)
                for (std::size_t car = 0; car < own.size(); ++car)
                    draw_one(prepared[car], own[car], track, settings.seed, draw, draws.cars[car]);
    };
    const unsigned count =
        settings.threads ? settings.threads : std::max(1u, std::thread::hardware_concurrency());
    {
        std::mutex mutex;
        std::condition_variable ended;
        unsigned running = count;
        std::vector<std::jthread> threads;
        for (unsigned n = 0; n < count; ++n)
            threads.emplace_back([&] {
                work();
                const std::lock_guard lock(mutex);
                --running;
                ended.notify_one();
            });
        std::unique_lock lock(mutex);
        while (running > 0) {
            ended.wait_for(lock, std::chrono::milliseconds(30));
            if (settings.keep_going &&
                !settings.keep_going(
                    std::min(1.0, double(next) / double(std::max<std::size_t>(1, settings.draws)))))
                stop = true;
        }
    }
    draws.cancelled = stop;
    if (draws.cancelled) return draws;
    for (std::size_t car = 0; car < cars.size(); ++car)
        draws.cars[car].shares = find_shares(prepared[car], draws.cars[car], settings.seed);
    return draws;
}

Figures with_draws(Figures figures, const CarDraws& draws) {
    figures.drawn = true;
    figures.shares = draws.shares;
    std::vector<double> times = draws.heat;
    std::sort(times.begin(), times.end());
    if (times.empty() || !figures.heat.time || !std::isfinite(times.back())) return figures;
    figures.heat.sigma = sample_sigma(times);
    const auto quantile = [&](double part) {
        const double place = part * double(times.size() - 1);
        const std::size_t below = std::size_t(place);
        const std::size_t above = std::min(below + 1, times.size() - 1);
        return times[below] + (place - double(below)) * (times[above] - times[below]);
    };
    figures.heat.interval95 = {quantile(0.025), quantile(0.975)};
    return figures;
}

Versus compare(const Project& project, std::size_t first, std::size_t second, const DrawSettings& settings) {
    const Draws draws = run_draws(project, {first, second}, settings);
    const CarDraws &a = draws.cars[0], &b = draws.cars[1];
    Versus versus;
    versus.draws = settings.draws;
    versus.seed = settings.seed;
    std::vector<double> gaps;
    for (std::size_t n = 0; n < settings.draws; ++n) {
        const auto half = [](double x, double y) { return x < y ? 1.0 : x > y ? 0.0 : 0.5; };
        versus.first_wins += half(a.heat[n], b.heat[n]);
        versus.first_better += half(a.expected[n], b.expected[n]);
        const double gap = b.expected[n] - a.expected[n];
        if (std::isfinite(gap)) gaps.push_back(gap);
    }
    versus.first_wins /= double(settings.draws);
    versus.first_better /= double(settings.draws);
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

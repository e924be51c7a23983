#include <rampwright/core/constants.hpp>
#include <rampwright/heat/guide.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <iostream>
#include <random>
#include <steer/planar_car.hpp>
#include <vector>

using namespace rampwright;

// The reduced model of going straight against a planar simulation that shares no code with it. What the
// simulation is told alike: friction and its shares, restitution, grip, the size of the joints' moment
// (another draw every 0.25 m) and of the lane's unevenness (as a toe of the rear wheels that changes over 2
// to 8 m). What it finds for itself: how the car moves, whether it holds the rail, what that costs.

namespace {

struct Racer {
    planar::Car car;
    planar::Lane lane;
    GuideSetup setup; ///< the same car for the reduced model
    double speed;
};

void steer_to(Racer& racer, double steer) {
    racer.car.steer = racer.setup.steer = steer;
}

/// A car between usual limits, on a lane of one of three qualities, with one of three kinds of holes.
Racer drawn_racer(std::mt19937_64& random) {
    std::uniform_real_distribution<double> uniform;
    std::normal_distribution<double> normal;
    const auto between = [&](double low, double high) { return low + (high - low) * uniform(random); };
    const double gravity = 9.80665;
    const std::size_t quality = random() % 3, holes = random() % 3;

    Racer r{};
    GuideSetup& s = r.setup;
    const double mass = between(0.11, 0.15);
    s.wheelbase = between(0.10, 0.13);
    const double yaw_inertia = mass * between(0.0016, 0.0024);
    s.front_load = between(0.008, 0.035) * gravity;
    const double ahead = s.front_load / (mass * gravity) * s.wheelbase;
    s.effective_mass = (yaw_inertia + mass * ahead * ahead) / (s.wheelbase * s.wheelbase);
    s.side_gap = between(0.002, 0.004);
    s.grip = 0.3 * std::exp(0.2 * normal(random));
    s.creep = 10 * std::exp(0.5 * normal(random));
    s.rail_friction = 0.2 * std::exp(0.2 * normal(random));
    s.ride_share = 0.25;
    s.touch_share = 0.6;
    s.restitution = between(0.3, 0.7);
    s.align = std::array{0.2, 0.4, 0.8}[holes] * degree;
    s.need = std::array{0.2, 0.4, 0.7}[quality] * degree;
    s.kick = std::array{0.9e-3, 1.4e-3, 2.0e-3}[quality];
    s.hold_width = 0.35;
    r.speed = between(3, 4.5);
    r.car = {mass, yaw_inertia, s.wheelbase, ahead,  s.front_load, mass * gravity - s.front_load,
             0,    0,           s.grip,      s.creep};
    // The rear wheels' faces stand clear of the rail: see the last test.
    r.lane = {s.side_gap,    s.side_gap + 0.004, s.rail_friction, s.ride_share,
              s.touch_share, s.restitution,      s.need,          s.kick};
    steer_to(r, between(0, 2) * degree);
    return r;
}

struct Seen {
    double loss = 0, contact = 0;
};

Seen simulate(const Racer& racer, int starts, std::uint64_t seed, double length = 16) {
    Seen seen;
    for (int i = 0; i < starts; ++i) {
        const planar::Outcome out =
            planar::run(racer.car, racer.lane, racer.speed, length, seed + static_cast<std::uint64_t>(i));
        seen.loss += out.loss / starts;
        seen.contact += out.contact / starts;
    }
    return seen;
}

} // namespace

TEST_CASE("riding or bouncing, and what it costs, as a planar simulation finds it") {
    std::mt19937_64 random(31);
    std::normal_distribution<double> normal;
    constexpr int cars = 200;
    int told_right = 0, near_half = 0, within_two = 0;
    std::vector<double> ratios;
    for (int i = 0; i < cars; ++i) {
        Racer racer = drawn_racer(random);
        // This car's rear pair points where its holes let it; both are told.
        racer.car.rear_toe = racer.setup.rear_toe = racer.setup.align * normal(random);
        racer.setup.align = 0.01 * degree;
        const Seen seen = simulate(racer, 40, 1000 + 100 * static_cast<std::uint64_t>(i));
        const Guide guide = make_guide(racer.setup);
        const bool right = (guide.ride_probability > 0.5) == (seen.contact > 0.5);
        told_right += right;
        near_half += !right && std::abs(seen.contact - 0.5) < 0.15;
        const double ratio = guide.force(racer.speed) / seen.loss;
        ratios.push_back(ratio);
        within_two += ratio > 0.5 && ratio < 2;
    }
    std::sort(ratios.begin(), ratios.end());
    std::cout << "planar referee: riding or bouncing told right " << told_right << " of " << cars << " ("
              << near_half << " of the misses between 35 and 65 % contact); loss within a factor of two "
              << within_two << ", model over simulation 5 % " << ratios[10] << ", median " << ratios[100]
              << ", 95 % " << ratios[190] << '\n';
    CHECK(told_right >= 0.9 * cars);
    CHECK(within_two >= 0.97 * cars);
    CHECK(ratios[100] > 0.9);
    CHECK(ratios[100] < 1.1);
    CHECK(ratios[10] > 0.7);
    CHECK(ratios[190] < 1.4);
}

namespace {

/// Expected loss over what the holes leave, the same draws at every steer.
class ExpectedLoss {
public:
    ExpectedLoss(Racer racer, std::uint64_t seed, int toes) : racer_(racer), seed_(seed), toes_(toes) {
        std::mt19937_64 random(seed);
        std::normal_distribution<double> normal;
        for (double& toe : toes_)
            toe = racer.setup.align * normal(random);
    }
    double operator()(double steer) {
        steer_to(racer_, steer);
        double sum = 0;
        for (std::size_t k = 0; k < toes_.size(); ++k) {
            racer_.car.rear_toe = toes_[k];
            sum += planar::run(racer_.car, racer_.lane, racer_.speed, 12, seed_ + k).loss;
        }
        return sum / static_cast<double>(toes_.size());
    }

private:
    Racer racer_;
    std::uint64_t seed_;
    std::vector<double> toes_;
};

constexpr double scan_step = 0.25 * degree;
using Scan = std::array<double, 17>;

/// The losses at 0 to 4 degrees.
Scan scan_of(ExpectedLoss& loss) {
    Scan scan{};
    for (std::size_t k = 0; k < scan.size(); ++k)
        scan[k] = loss(static_cast<double>(k) * scan_step);
    return scan;
}

struct Best {
    double steer = 0, loss = 0;
};

/// The least of the parabola that lies nearest (least squares) to the least of a scan and two neighbours on
/// each side: many optima are flat, and a scan keeps some scatter.
Best best_of(const Scan& scan) {
    const auto least = std::min_element(scan.begin(), scan.end());
    const auto k = static_cast<std::size_t>(least - scan.begin());
    Best best{static_cast<double>(k) * scan_step, *least};
    if (k == 0 || k + 1 == scan.size()) return best;
    const std::size_t reach = std::min({std::size_t{2}, k, scan.size() - 1 - k});
    double s2 = 0, s4 = 0, y0 = 0, y1 = 0, y2 = 0;
    const auto n = static_cast<double>(2 * reach + 1);
    for (std::size_t i = k - reach; i <= k + reach; ++i) {
        const double x = static_cast<double>(i) - static_cast<double>(k), y = scan[i];
        s2 += x * x;
        s4 += x * x * x * x;
        y0 += y;
        y1 += x * y;
        y2 += x * x * y;
    }
    const double slope = y1 / s2, bend = (y2 - s2 * y0 / n) / (s4 - s2 * s2 / n);
    if (bend > 0)
        best.steer += scan_step * std::clamp(-slope / (2 * bend), -static_cast<double>(reach),
                                             static_cast<double>(reach));
    return best;
}

/// How much harder the front crosses after a touch than it came, without the grip's limit: a touch turns the
/// car about its rear axle at (1 + e) psi / L a metre, and the tread takes that out over m_e v² / (C W).
/// Above 1 it wags from rail to rail, until the rear treads slip.
double wag_gain(const Racer& racer) {
    const GuideSetup& s = racer.setup;
    const double settling = s.effective_mass * racer.speed * racer.speed / (s.creep * s.front_load);
    return (1 + s.restitution) * settling / s.wheelbase - 1;
}

/// What a force more costs on nine metres of level, s: it takes F x / (m v) off the speed at x, and the time
/// that this loses is its integral over the square of the speed, F s² / (2 m v³).
double time_cost(const Racer& racer, double force) {
    constexpr double level = 9;
    return force * level * level / (2 * racer.car.mass * std::pow(racer.speed, 3));
}

/// The car of docs and demo: 15 g in front, jig holes, a fair lane.
Racer usual_racer() {
    Racer r{};
    GuideSetup& s = r.setup;
    s = {.wheelbase = 0.1111,
         .effective_mass = (2.7e-4 + 0.1417 * 0.0118 * 0.0118) / (0.1111 * 0.1111),
         .front_load = 0.147,
         .side_gap = 0.003,
         .grip = 0.3,
         .creep = 10,
         .rail_friction = 0.2,
         .ride_share = 0.25,
         .touch_share = 0.6,
         .restitution = 0.5,
         .align = 0.2 * degree,
         .need = 0.4 * degree,
         .kick = 1.4e-3,
         .hold_width = 0.35};
    r.speed = 4;
    r.car = {0.1417, 2.7e-4, 0.1111, 0.0118, 0.147, 1.2426, 0, 0, 0.3, 10};
    r.lane = {0.003, 0.007, 0.2, 0.25, 0.6, 0.5, s.need, s.kick};
    return r;
}

} // namespace

TEST_CASE("the best steer as a planar simulation finds it") {
    ExpectedLoss usual(usual_racer(), 4000, 400);
    const Best best = best_of(scan_of(usual));
    const double model = best_steer(usual_racer().setup, 4);
    const double extra = usual(model) - best.loss;
    std::cout << "planar referee: best steer of the usual car " << best.steer / degree << " deg, model "
              << model / degree << " deg, which costs " << extra * 1e3 << " mN more\n";
    // Interior both ways, and less than 2 ms of a heat apart (1 mN all the way costs about 5 ms).
    CHECK(best.steer > 0.4 * degree);
    CHECK(best.steer < 2 * degree);
    CHECK(extra < 0.4e-3);
    CHECK(time_cost(usual_racer(), extra) < 2e-3);
}

namespace {

/// How far the model's best steer lies from the simulation's, and what that costs; apart for cars that wag.
void compare_best_steer(unsigned seed, int cars) {
    std::mt19937_64 random(seed);
    int near = 0, alike = 0, cheap = 0, steady = 0, steady_near = 0;
    double worst_steady = 0;
    std::vector<double> costs, times;
    for (int i = 0; i < cars; ++i) {
        const Racer racer = drawn_racer(random);
        // Two draws of starts and rear pairs: how far they part is the simulation's own doubt.
        const auto number = 5000 + 1000 * static_cast<std::uint64_t>(i);
        ExpectedLoss first(racer, number, 60), second(racer, number + 500000, 60);
        const auto one = scan_of(first), two = scan_of(second);
        Scan both{};
        for (std::size_t k = 0; k < both.size(); ++k)
            both[k] = 0.5 * (one[k] + two[k]);
        const Best found = best_of(both);
        const double steer = best_steer(racer.setup, racer.speed);
        const double extra = std::max(0.0, 0.5 * (first(steer) + second(steer)) - found.loss);
        if (std::abs(steer - found.steer) >= 0.3 * degree)
            std::cout << "planar referee: car " << i << " of " << seed << ": " << found.steer / degree
                      << " deg (" << best_of(one).steer / degree << " and " << best_of(two).steer / degree
                      << "), model " << steer / degree << ", gain " << wag_gain(racer) << ", " << extra * 1e3
                      << " mN\n";
        const bool close = std::abs(steer - found.steer) < 0.3 * degree;
        near += close;
        alike += std::abs(best_of(one).steer - best_of(two).steer) < 0.3 * degree;
        costs.push_back(extra * 1e3);
        times.push_back(time_cost(racer, extra) * 1e3);
        cheap += extra < 0.3e-3;
        if (wag_gain(racer) < 1) {
            ++steady;
            steady_near += close;
            worst_steady = std::max(worst_steady, extra * 1e3);
        }
    }
    std::sort(costs.begin(), costs.end());
    std::sort(times.begin(), times.end());
    const auto middle = static_cast<std::size_t>(cars / 2);
    std::cout << "planar referee: best steer within 0.3 deg for " << near << " of " << cars
              << " drawn cars (two draws of the simulation agree for " << alike
              << "); the model's steer costs under 0.3 mN for " << cheap << ", median " << costs[middle]
              << " mN, " << times[middle] << " ms, worst " << costs.back() << " mN, " << times.back()
              << " ms; of " << steady << " cars that do not wag " << steady_near
              << " lie within 0.3 deg, worst " << worst_steady << " mN\n";
    CHECK(near >= 0.9 * cars);
    CHECK(costs[middle] < 0.05);
    CHECK(times[middle] < 0.5);
    CHECK(costs.back() < 1);
    // Where nothing wags the model's steer is the simulation's.
    REQUIRE(steady >= cars / 4);
    CHECK(steady_near == steady);
    CHECK(worst_steady < 0.2);
}

} // namespace

// The model's two fitted values come from other cars of the same kind (guide.cpp): none of these.
TEST_CASE("the best steer of drawn cars, and what missing it costs") {
    compare_best_steer(32, 20);
}

TEST_CASE("the best steer of other drawn cars, and what missing it costs") {
    compare_best_steer(77, 20);
}

TEST_CASE("lanes and holes move the best steer as a planar simulation has it") {
    const auto best = [](double align, double need, double kick) {
        Racer racer = usual_racer();
        racer.setup.align = align * degree;
        racer.lane.uneven = racer.setup.need = need * degree;
        racer.lane.kick = racer.setup.kick = kick;
        ExpectedLoss loss(racer, 9000, 120);
        const double found = best_of(scan_of(loss)).steer, model = best_steer(racer.setup, racer.speed);
        std::cout << "planar referee: holes " << align << " deg, lane " << need << " deg: best steer "
                  << found / degree << " deg, model " << model / degree << " deg\n";
        CHECK(std::abs(found - model) < 0.3 * degree);
        return found;
    };
    const double fair = best(0.2, 0.4, 1.4e-3);
    CHECK(best(0.2, 0.7, 2.0e-3) > fair); // rough
    CHECK(best(0.2, 0.2, 0.9e-3) < fair); // smooth
    CHECK(best(0.4, 0.4, 1.4e-3) > fair); // drill press
    best(0.8, 0.4, 1.4e-3);               // slots
}

TEST_CASE("riding on a straight lane costs what the closed form says") {
    // No joints, no unevenness: the front wheel slips by the net steer and leans on the rail with its side
    // force.
    for (double steer : {1.2, 1.6, 2.0})
        for (double rear : {-0.3, 0.0, 0.3}) {
            Racer racer = usual_racer();
            racer.lane.uneven = racer.lane.kick = 0;
            racer.setup.need = racer.setup.align = 1e-6;
            racer.setup.kick = 1e-9;
            racer.car.rear_toe = racer.setup.rear_toe = rear * degree;
            steer_to(racer, steer * degree);
            const Seen seen = simulate(racer, 4, 50);
            CAPTURE(steer, rear);
            CHECK(seen.contact == Approx(1).margin(0.01));
            CHECK(make_guide(racer.setup).ride_force == Approx(seen.loss).epsilon(0.03));
        }
}

TEST_CASE("where the reduced model fails: a car that wags") {
    // 8.5 g in front: told to ride, it wags from rail to rail at several times the loss. Kept as a check that
    // the limit stated in the header is real.
    Racer racer = usual_racer();
    racer.setup.front_load = racer.car.front_load = 0.083;
    racer.car.rear_load = 0.1417 * 9.80665 - 0.083;
    racer.car.ahead = 0.083 / (0.1417 * 9.80665) * 0.1111;
    racer.setup.restitution = racer.lane.restitution = 0.7;
    steer_to(racer, 1.0 * degree);
    racer.lane.uneven = racer.setup.need = 0.2 * degree;
    const Seen seen = simulate(racer, 8, 70);
    const double model = make_guide(racer.setup).force(racer.speed);
    std::cout << "planar referee: light front wagging, simulation " << seen.loss * 1e3 << " mN at "
              << 100 * seen.contact << " % contact, model " << model * 1e3 << " mN\n";
    CHECK(seen.loss > 1.5 * model);
}

TEST_CASE("where the reduced model fails: rear wheels that rub") {
    // A rear pair towards the rail by 0.4 deg settles 0.8 mm nearer to it. With room it costs nothing more;
    // with no more room than in front it rubs.
    Racer racer = usual_racer();
    racer.lane.uneven = racer.lane.kick = 0;
    racer.car.rear_toe = 0.4 * degree;
    steer_to(racer, 1.4 * degree);
    racer.lane.rear_gap = racer.lane.gap + 0.001;
    const double clear = simulate(racer, 4, 90).loss;
    racer.lane.rear_gap = racer.lane.gap;
    const double rubs = simulate(racer, 4, 90).loss;
    std::cout << "planar referee: rear pair 0.4 deg towards the rail, clear " << clear * 1e3
              << " mN, rubbing " << rubs * 1e3 << " mN\n";
    CHECK(rubs > clear + 3e-3);
}

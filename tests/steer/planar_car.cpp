#include <algorithm>
#include <array>
#include <cmath>
#include <random>
#include <steer/planar_car.hpp>

namespace planar {

namespace {

/// Waves between `shortest` and four times that, of this root mean square, read step by step: sines that turn
/// by the same angle each time.
class Waves {
public:
    Waves(double size, double shortest, double stride, std::mt19937_64& random) {
        std::uniform_real_distribution<double> uniform;
        for (Wave& wave : waves_) {
            const double number = 2 * M_PI / (shortest * (1 + 3 * uniform(random)));
            const double phase = 2 * M_PI * uniform(random), amplitude = size * std::sqrt(2.0 / count);
            wave = {amplitude * std::sin(phase), amplitude * std::cos(phase), std::sin(number * stride),
                    std::cos(number * stride)};
        }
    }
    /// The height here, and on by one stride.
    double next() {
        double sum = 0;
        for (auto& [sine, cosine, turn_sine, turn_cosine] : waves_) {
            sum += sine;
            const double on = sine * turn_cosine + cosine * turn_sine;
            cosine = cosine * turn_cosine - sine * turn_sine;
            sine = on;
        }
        return sum;
    }

private:
    static constexpr int count = 5;
    struct Wave {
        double sine, cosine, turn_sine, turn_cosine;
    };
    std::array<Wave, count> waves_;
};

double tread(double load, double slip, double grip, double creep) {
    return load * grip * std::tanh(creep * slip / grip);
}

} // namespace

Outcome run(const Car& car, const Lane& lane, double speed, double length, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> uniform(-1, 1);
    // A touch lasts some 5 ms.
    const double dt = 2e-4;
    Waves uneven(lane.uneven, lane.shortest_wave, speed * dt, random);

    const double to_front = car.wheelbase - car.ahead, to_rear = car.ahead;
    // A rail as a stiff spring with a damper that gives the restitution to a mass like the car's front.
    const double front_mass =
        (car.yaw_inertia + car.mass * to_rear * to_rear) / (car.wheelbase * car.wheelbase);
    const double stiffness = 1e4;
    const double log_e = std::log(lane.restitution);
    const double damping =
        -2 * log_e / std::sqrt(M_PI * M_PI + log_e * log_e) * std::sqrt(stiffness * front_mass);

    const auto steps = static_cast<long>(length / speed / dt);
    double y = 0.8 * lane.gap * uniform(random), yaw = 0.005 * normal(random), vy = speed * yaw, spin = 0;
    double kick = 0, next_kick = 0, lost = 0, way = 0, held = 0;
    double lasting = 0; // s the ridden contact has lasted
    int touches = 0;
    std::array<bool, 2> touching{};
    for (long step = 0; step < steps; ++step) {
        const double x = speed * dt * static_cast<double>(step);
        if (x >= next_kick) {
            kick = lane.kick * normal(random);
            next_kick += lane.kick_length;
        }
        const bool counted = 4 * step > steps;

        double force = 0, moment = kick, power = 0;
        // Treads: slip is where the wheel points less where it goes.
        const auto wheels = [&](double arm, double toe, double load) {
            const double slip = toe - ((vy + arm * spin) / speed - yaw);
            const double side = tread(load, slip, car.grip, car.creep);
            force += side;
            moment += arm * side;
            power += side * slip * speed;
        };
        wheels(to_front, car.steer, car.front_load);
        wheels(-to_rear, car.rear_toe + uneven.next(), car.rear_load);

        const auto rails = [&](double arm, bool front) {
            const double off = y + arm * yaw, rate = vy + arm * spin;
            for (int side : {1, -1}) {
                const double depth = side * off - (front ? lane.gap : lane.rear_gap), closing = side * rate;
                const bool in = depth > 0;
                const double push = in ? std::max(0.0, stiffness * depth + damping * closing) : 0;
                if (front) {
                    bool& was = touching[side == 1 ? 0 : 1];
                    if (in && !was && counted) ++touches;
                    was = in;
                    if (side == 1) {
                        lasting = in ? lasting + dt : 0;
                        if (counted && in) held += speed * dt;
                    }
                }
                if (!in) continue;
                force -= side * push;
                moment -= side * arm * push;
                const bool rides = front && side == 1 && lasting > 0.05;
                const double drag = lane.rail_friction * push * (rides ? lane.ride_share : lane.touch_share);
                power += drag * speed + (push - stiffness * depth) * closing;
            }
        };
        rails(to_front, true);
        rails(-to_rear, false);

        vy += dt * force / car.mass;
        spin += dt * moment / car.yaw_inertia;
        y += dt * vy;
        yaw += dt * spin;
        if (counted) {
            lost += dt * power;
            way += dt * speed;
        }
    }
    return {lost / way, held / way, touches};
}

} // namespace planar

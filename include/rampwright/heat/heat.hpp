#pragma once

#include <rampwright/heat/geometry.hpp>
#include <rampwright/heat/losses.hpp>
#include <rampwright/results/figures.hpp>
#include <rampwright/track/track.hpp>

#include <array>
#include <optional>
#include <vector>

namespace rampwright {

/// One axle of a car in a heat: its touching wheels summed. N is the axle's load.
struct HeatAxle {
    double radius = 0;             ///< m, of the wheels that touch
    double wheel_mass = 0;         ///< kg, of the wheels that touch
    double spin_mass = 0;          ///< kg, their spin inertia over radius squared
    double journal = 0;            ///< N of resistance per N of axle load, from the bearings
    double journal_wheel = 0;      ///< kg: what the wheels' own weight takes off that, per (g cos + k v²)
    double hub = 0, hub_wheel = 0; ///< likewise, from the hubs
    double rolling = 0;            ///< N per N of load
    double scrub = 0;              ///< N per N of load
    double windage = 0;            ///< N per (m/s)^1.5
};

/// A car as the equations of motion need it: planar and rigid. Level frame: x ahead of the rear axle, z above
/// the surface. Each wheel's own part of an axle is kept in `shares` for the by-wheel books.
struct HeatCar {
    double mass = 0;
    double pitch_inertia = 0; ///< kg m², whole car less the own spin inertia of the wheels that turn
    double wheelbase = 0;     ///< m, along the level
    Vec2 centre = Vec2::Zero(), nose = Vec2::Zero();
    HeatAxle rear, front;
    double air_area = 0; ///< m², drag coefficient times frontal area
    double air_density = 0;
    double drag_height = 0;
    Guide guide;

    /// A wheel's part of its axle's sums, by Corner.
    struct WheelPart {
        bool touches = false;
        double load_share = 0, mass = 0, spin_mass = 0, journal_arm = 0, hub_arm = 0, rolling = 0, scrub = 0,
               windage = 0;
    };
    std::array<WheelPart, 4> parts;
};

/// Sums the wheels of each axle; a wheel's share of its axle's load is its share when standing.
HeatCar prepare(const CarOnWheels& car, const std::array<WheelLoss, 4>& losses, const Standing& level,
                double air_density, const Guide& guide);

struct HeatOptions {
    double tolerance = 1e-9; ///< s, aim for the error of the time
    std::size_t nodes = 0;   ///< of the collocation, 2 to 8: order is twice that; 0: as each stretch needs
    int parts = 1;           ///< into which each stretch is cut further before the error is looked at
    bool drop_journal_from_books = false; ///< for the test that the books notice a missing entry
};

/// A moment of a heat.
struct HeatPoint {
    double at = 0;                        ///< m: nose's foot point along the surface from the start line
    double time = 0;                      ///< s
    double speed = 0;                     ///< of the centre of mass, m/s
    double rear_load = 0, front_load = 0; ///< N
    double power_journal = 0, power_hub = 0, power_rolling = 0, power_scrub = 0, power_air = 0,
           power_rail = 0; ///< W
    double q = 0;          ///< m, the rear centre's coordinate
};

struct HeatResult {
    bool finished = false;
    double time = 0; ///< s, start to finish by the equations; the clock's offset is not in it
    double finish_speed = 0, top_speed = 0;
    double reached = 0;
    bool lifted_front = false, lifted_rear = false;
    double lifted_at = 0;
    double smallest_front_load = 0, smallest_front_load_at = 0; ///< N, m
    Budget budget;
    std::array<WheelBudget, 4> by_wheel;
    double residual = 0;          ///< of the books, relative to the energy released
    std::vector<HeatPoint> trace; ///< where asked for
    int evaluations = 0;          ///< of the equations of motion
};

/// What the caller wants beyond the time.
enum class HeatDetail { time, books, trace };

/// The start line, the finish line and the smooth stretches between, for one car's geometry: kept apart so
/// that heats that differ in masses and losses alone share it.
class Course {
public:
    /// @param track must outlive the course.
    /// @throws Problem where the car does not fit between the lines.
    Course(const Track& track, const HeatCar& car);

    struct Stretch {
        double from = 0, to = 0; ///< rear coordinate q, m
        std::size_t rear_piece = 0, front_piece = 0;
        double front_q = 0;    ///< of the front centre at `from`: a first guess
        bool straight = false; ///< both axles on one straight line
    };
    const AxlePair& axles() const { return axles_; }
    const std::vector<Stretch>& stretches() const { return stretches_; }
    double start() const { return stretches_.front().from; }
    double finish() const { return stretches_.back().to; }
    double gravity() const { return gravity_; }
    /// The nose's foot point along the surface from the start line, m, with the car at q.
    double foot(double q) const;
    /// Slope of the surface at the start line, rad.
    double start_slope() const { return start_slope_; }

private:
    double find_line(double s, double guess) const;
    const Track* track_;
    AxlePair axles_;
    std::complex<double> nose_; ///< in the frame of the two centres
    std::vector<Stretch> stretches_;
    double gravity_ = 9.80665, start_slope_ = 0, start_line_ = 0;
};

/// One heat from rest at the start pin until the nose's foot point reaches the finish line.
HeatResult run_heat(const Course& course, const HeatCar& car, HeatDetail detail = HeatDetail::books,
                    const HeatOptions& options = {});

/// The two wheel centres' line of a level car: a point of the level frame in the frame of that line
/// (along it from the rear centre; to its left).
std::complex<double> in_axle_frame(const HeatCar& car, const Vec2& level);

} // namespace rampwright

#pragma once

#include <rampwright/heat/heat.hpp>

namespace rampwright {

/// The equations of motion at one place of one car's way: three linear equations for the acceleration q'' and
/// the two axle loads, solved once for each of the four things they are linear in: a constant, w = q'^2,
/// w^(3/4) (windage) and the guide's force. docs/model.md, "Motion of one heat".
class MotionAt {
public:
    /// What stays the same along the way. The car must outlive it, and it the motion.
    struct Setting {
        Setting(const HeatCar& heat_car, double acceleration_of_gravity);
        const HeatCar* car;
        double gravity;
        std::complex<double> centre, forward; ///< centre of mass and body's axis, in the axles' frame
    };
    MotionAt(const Setting& setting, const Pose& pose);

    /// Which of an axle's frictions act: its bearings while they carry, its treads while they touch.
    struct Acting {
        bool bearings = true, treads = true;
        bool operator==(const Acting&) const = default;
    };
    struct State {
        double acceleration = 0, rear_load = 0, front_load = 0;
        double guide_force = 0, power34 = 0; ///< w^(3/4)
        Acting rear, front;
    };
    /// @param w q'^2, m²/s²; a negative one is taken as zero.
    State solve(double w) const;

    /// What the front load is made of while both axles carry: a constant, N, and what w, w^(3/4) and the
    /// guide's force are multiplied by.
    std::array<double, 4> front_terms() const {
        return {usual_.front[0], usual_.front[1], usual_.front[2], usual_.front[3]};
    }

    /// Per metre of q, the integrands of the books. An axle's entries are coefficients times these, for the
    /// whole axle or for one wheel's part of it.
    struct AxleFlow {
        double load_relative = 0;   ///< N (s' + R theta'): bearings turn against a body that pitches itself
        double weight_relative = 0; ///< (g cos + k v²) (s' + R theta')
        double tread_relative = 0;  ///< N (s' + R theta') while the treads touch: scrub
        double load = 0;            ///< N s': rolling
        double windage = 0;         ///< v^1.5 s'
    };
    struct Flow {
        AxleFlow rear, front;
        double drag = 0, rail = 0;
    };
    Flow flow(const State& state, double w) const;

    /// Speed of the centre of mass over q'.
    double centre_rate() const { return centre_rate_; }
    double pitch_rate() const { return pitch_rate_; }
    double rear_rate() const { return rear_.rate; }
    double front_rate() const { return front_.rate; }
    /// Height of the centre of mass.
    double height() const { return height_; }

private:
    /// One axle's contact: its place in the equations.
    struct Contact {
        double rate = 1, rate_rate = 0; ///< s', s''
        std::complex<double> tangent, normal;
        double normal_moment = 0,
               tangent_moment = 0; ///< of unit forces at the contact about the centre of mass
        double cosine_weight = 0, curvature_weight = 0; ///< g cos(slope); curvature s'^2
        double windage = 0;                             ///< N per w^(3/4)
        double rate15 = 1;                              ///< s'^1.5
    };
    struct Solution {
        double acceleration[4], rear[4], front[4];
    };
    static Contact contact(const HeatAxle& axle, const CentrePath::Point& at, double rate, double rate_rate,
                           std::complex<double> centre, double gravity);
    Solution solve_linear(Acting rear, Acting front) const;
    AxleFlow axle_flow(const HeatAxle& axle, const Contact& contact, double load, Acting acting, double w,
                       double power34) const;

    const HeatCar* car_;
    Contact rear_, front_;
    std::complex<double> centre_first_, centre_second_; ///< r_c', r_c''
    std::complex<double> body_axis_;
    double pitch_rate_, pitch_rate_rate_;
    double centre_rate_, height_, gravity_;
    double drag_ = 0, drag_offset_ = 0; ///< N per w; height of its line above the centre of mass, m
    Solution usual_;
};

} // namespace rampwright

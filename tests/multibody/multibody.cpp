#include <Simbody.h>

#include <cmath>
#include <memory>
#include <multibody/multibody.hpp>

namespace rampwright::multibody {

namespace {

using SimTK::Real;
using SimTK::Vec2;
using SimTK::Vec3;

/// The path of a wheel's centre above ramp, arc and level, as functions on the plane: distance from it
/// (positive to the left) and arc length of the nearest point, with first and second derivatives. X = 0 at
/// the arc's end, the level at Z = 0.
class CentrePath {
public:
    CentrePath(const Lane& lane, double wheel) : lane_(lane), rho_(lane.radius - wheel), wheel_(wheel) {}

    struct At {
        double distance, along, curvature, shrink; ///< shrink: 1 - k d
        Vec2 tangent, normal;
    };
    At at(double x, double z) const {
        const double c = std::cos(lane_.slope), s = std::sin(lane_.slope);
        // About the arc's centre; angle from straight below, negative on the ramp's side.
        const double angle = std::atan2(x, lane_.radius - z);
        const double arc = rho_ * lane_.slope;
        if (x >= 0) return {z - wheel_, lane_.ramp + arc + x, 0, 1, Vec2(1, 0), Vec2(0, 1)};
        if (angle < -lane_.slope) {
            const Vec2 t(c, -s), n(s, c);
            const Vec2 from = Vec2(x, z) - Vec2(0, lane_.radius) + rho_ * n; // from the arc's beginning
            return {
                from[0] * n[0] + from[1] * n[1], lane_.ramp + from[0] * t[0] + from[1] * t[1], 0, 1, t, n};
        }
        const double r = std::hypot(x, lane_.radius - z);
        return {rho_ - r, lane_.ramp + arc + rho_ * angle,        1 / rho_,
                r / rho_, Vec2(std::cos(angle), std::sin(angle)), Vec2(-std::sin(angle), std::cos(angle))};
    }

private:
    Lane lane_;
    double rho_, wheel_;
};

double dot(const Vec2& a, const Vec2& b) {
    return a[0] * b[0] + a[1] * b[1];
}

/// A function of pitch, x, z (and a wheel's angle) that a constraint keeps at zero: an axle's distance from
/// the path, or a wheel's turning against its way.
class OnPath : public SimTK::Function {
public:
    /// @param ahead of the body's origin, m.
    OnPath(const CentrePath& path, double ahead) : path_(path), ahead_(ahead) {}
    /// A wheel that rolls: its absolute angle plus (way - way_at_rest) / radius.
    OnPath(const CentrePath& path, double ahead, double radius, double way_at_rest, double angle_at_rest)
        : path_(path), ahead_(ahead), radius_(radius), offset_(angle_at_rest + way_at_rest / radius) {}

    Real calcValue(const SimTK::Vector& q) const override {
        const CentrePath::At at = place(q);
        return radius_ > 0 ? q[0] + q[3] + at.along / radius_ - offset_ : at.distance;
    }
    Real calcDerivative(const SimTK::Array_<int>& by, const SimTK::Vector& q) const override {
        const CentrePath::At at = place(q);
        const double scale = radius_ > 0 ? 1 / radius_ : 1;
        const Vec2 gradient = radius_ > 0 ? Vec2(at.tangent / at.shrink) : at.normal;
        if (by.size() == 1) {
            const double turning = radius_ > 0 && (by[0] == 0 || by[0] == 3) ? 1 : 0;
            return turning + scale * dot(gradient, moved(by[0], q));
        }
        if (by.size() > 2) return 0; // not asked for
        const Vec2 a = moved(by[0], q), b = moved(by[1], q);
        const double at_a = dot(a, at.tangent), an = dot(a, at.normal);
        const double bt = dot(b, at.tangent), bn = dot(b, at.normal);
        const double bend = radius_ > 0 ? at.curvature / (at.shrink * at.shrink) * (at_a * bn + an * bt)
                                        : -at.curvature / at.shrink * at_a * bt;
        double second = bend;
        if (by[0] == 0 && by[1] == 0) second += dot(gradient, -ahead_ * Vec2(std::cos(q[0]), std::sin(q[0])));
        return scale * second;
    }
    int getArgumentSize() const override { return radius_ > 0 ? 4 : 3; }
    int getMaxDerivativeOrder() const override { return 2; }

private:
    CentrePath::At place(const SimTK::Vector& q) const {
        return path_.at(q[1] + ahead_ * std::cos(q[0]), q[2] + ahead_ * std::sin(q[0]));
    }
    /// Derivative of the axle's place by an argument.
    Vec2 moved(int by, const SimTK::Vector& q) const {
        switch (by) {
        case 0:
            return ahead_ * Vec2(-std::sin(q[0]), std::cos(q[0]));
        case 1:
            return {1, 0};
        case 2:
            return {0, 1};
        default:
            return {0, 0};
        }
    }
    const CentrePath& path_;
    double ahead_, radius_ = 0, offset_ = 0;
};

struct Loads {
    double rear = 0, front = 0;
};

/// One copy of the mechanism.
struct Mechanism {
    Mechanism(const Car& car, const Lane& lane, const CentrePath& path,
              SimTK::Force::Custom::Implementation* friction);

    /// At rest with the nose's foot on the start line.
    SimTK::State at_start() const {
        SimTK::State state = system.getDefaultState();
        system.realizeModel(state);
        chassis.setQ(state, start);
        return state;
    }
    Loads loads(const SimTK::State& state) const {
        return {-rear_path.getMultipliersAsVector(state)[0], -front_path.getMultipliersAsVector(state)[0]};
    }

    SimTK::MultibodySystem system;
    SimTK::SimbodyMatterSubsystem matter;
    SimTK::GeneralForceSubsystem forces;
    SimTK::MobilizedBody::Planar chassis;
    std::vector<SimTK::MobilizedBody::Pin> wheels;
    SimTK::Constraint::CoordinateCoupler rear_path, front_path;
    Vec3 start;
};

/// What resists, given the axle loads; everything here is a torque on a joint or a force on a body.
void resist(const Car& car, const Lane& lane, const CentrePath& path, const Mechanism& m,
            const SimTK::State& state, const Loads& loads, SimTK::Vector_<SimTK::SpatialVec>& bodies,
            SimTK::Vector& joints) {
    const Vec3 q = m.chassis.getQ(state), u = m.chassis.getU(state);
    const auto velocity = [&](double x, double z) -> Vec2 { // of a point of the body, from its origin
        const double c = std::cos(q[0]), s = std::sin(q[0]);
        return {u[1] - u[0] * (x * s + z * c), u[2] + u[0] * (x * c - z * s)};
    };
    for (std::size_t n = 0; n < car.wheels.size(); ++n) {
        const WheelOnAxle& wheel = car.wheels[n];
        const double ahead = wheel.front ? car.wheelbase : 0;
        const CentrePath::At at = path.at(q[1] + ahead * std::cos(q[0]), q[2] + ahead * std::sin(q[0]));
        const double speed = dot(velocity(ahead, 0), at.tangent);
        const double load = wheel.load_share * (wheel.front ? loads.front : loads.rear);
        const double bearing =
            load - wheel.mass * (lane.gravity * at.tangent[0] + at.curvature * speed * speed);
        // Forward rolling turns a wheel clockwise, so what resists is positive.
        m.matter.addInMobilityForce(state, m.wheels[n], SimTK::MobilizerUIndex(0),
                                    wheel.bearing_arm * bearing, joints);
        m.matter.addInBodyTorque(state, m.wheels[n], Vec3(0, 0, wheel.rolling * load * car.radius), bodies);
    }
    const double v = velocity(car.centre_x, car.centre_z - car.radius).norm();
    const Vec3 axis(std::cos(q[0]), std::sin(q[0]), 0);
    m.matter.addInStationForce(state, m.chassis, Vec3(0, car.drag_z - car.radius, 0),
                               -car.drag * v * v * axis, bodies);
}

/// Friction from loads that are given.
class GivenLoads : public SimTK::Force::Custom::Implementation {
public:
    GivenLoads(const Car& car, const Lane& lane, const CentrePath& path)
        : car_(car), lane_(lane), path_(path) {}
    void calcForce(const SimTK::State& state, SimTK::Vector_<SimTK::SpatialVec>& bodies,
                   SimTK::Vector_<Vec3>&, SimTK::Vector& joints) const override {
        resist(car_, lane_, path_, *mechanism, state, loads, bodies, joints);
    }
    Real calcPotentialEnergy(const SimTK::State&) const override { return 0; }

    const Mechanism* mechanism = nullptr;
    Loads loads;

private:
    const Car& car_;
    const Lane& lane_;
    const CentrePath& path_;
};

/// Friction from the loads that it causes: a twin of the mechanism is asked for them until they settle.
class FoundLoads : public SimTK::Force::Custom::Implementation {
public:
    FoundLoads(const Car& car, const Lane& lane, const CentrePath& path, Mechanism& twin, GivenLoads& given)
        : car_(car), lane_(lane), path_(path), twin_(twin), given_(given), twin_state_(twin.at_start()) {}
    void calcForce(const SimTK::State& state, SimTK::Vector_<SimTK::SpatialVec>& bodies,
                   SimTK::Vector_<Vec3>&, SimTK::Vector& joints) const override {
        for (int round = 0; round < 30; ++round) {
            twin_state_.updQ() = state.getQ(); // also asks for everything again
            twin_state_.updU() = state.getU();
            twin_.system.realize(twin_state_, SimTK::Stage::Acceleration);
            const Loads found = twin_.loads(twin_state_);
            const double change =
                std::abs(found.rear - given_.loads.rear) + std::abs(found.front - given_.loads.front);
            given_.loads = found;
            if (change < 1e-12) break;
        }
        resist(car_, lane_, path_, *mechanism, state, given_.loads, bodies, joints);
    }
    Real calcPotentialEnergy(const SimTK::State&) const override { return 0; }

    const Mechanism* mechanism = nullptr;

private:
    const Car& car_;
    const Lane& lane_;
    const CentrePath& path_;
    Mechanism& twin_;
    GivenLoads& given_;
    mutable SimTK::State twin_state_;
};

Mechanism::Mechanism(const Car& car, const Lane& lane, const CentrePath& path,
                     SimTK::Force::Custom::Implementation* friction)
    : matter(system), forces(system) {
    SimTK::Force::UniformGravity(forces, matter, Vec3(0, -lane.gravity, 0));
    // The chassis is what is left of the car without its touching wheels.
    double mass = car.mass, inertia = car.pitch_inertia;
    Vec2 moment = car.mass * Vec2(car.centre_x, car.centre_z - car.radius);
    const Vec2 centre = moment / car.mass;
    for (const WheelOnAxle& wheel : car.wheels) {
        const Vec2 at(wheel.front ? car.wheelbase : 0, 0);
        mass -= wheel.mass;
        moment -= wheel.mass * at;
        inertia -= wheel.mass * (at - centre).normSqr();
    }
    const Vec2 rest = moment / mass;
    inertia -= mass * (rest - centre).normSqr();
    const auto about_z = [](double i) { return SimTK::Inertia(0.5 * i, 0.5 * i, i); };
    const SimTK::Body::Rigid body(
        SimTK::MassProperties(mass, Vec3(rest[0], rest[1], 0),
                              about_z(inertia).shiftFromMassCenter(Vec3(rest[0], rest[1], 0), mass)));
    chassis = SimTK::MobilizedBody::Planar(matter.Ground(), SimTK::Transform(), body, SimTK::Transform());

    // The rear centre starts nose_x behind the start line, on the ramp.
    const double c = std::cos(lane.slope), s = std::sin(lane.slope);
    const double way = -car.nose_x - lane.ramp; // along the ramp from the arc's beginning
    const Vec2 arc(-lane.radius * s, lane.radius * (1 - c));
    start = Vec3(-lane.slope, arc[0] + way * c + car.radius * s, arc[1] - way * s + car.radius * c);

    using Bodies = SimTK::Array_<SimTK::MobilizedBodyIndex>;
    using Coordinates = SimTK::Array_<SimTK::MobilizerQIndex>;
    const auto index = [](int n) { return SimTK::MobilizerQIndex(n); };
    const auto b = chassis.getMobilizedBodyIndex();
    const Bodies plane{b, b, b};
    const Coordinates plane_q{index(0), index(1), index(2)};
    rear_path = SimTK::Constraint::CoordinateCoupler(matter, new OnPath(path, 0), plane, plane_q);
    front_path =
        SimTK::Constraint::CoordinateCoupler(matter, new OnPath(path, car.wheelbase), plane, plane_q);
    for (const WheelOnAxle& wheel : car.wheels) {
        const double ahead = wheel.front ? car.wheelbase : 0;
        const SimTK::Body::Rigid disc(
            SimTK::MassProperties(wheel.mass, Vec3(0), about_z(wheel.spin_inertia)));
        wheels.emplace_back(chassis, SimTK::Transform(Vec3(ahead, 0, 0)), disc, SimTK::Transform());
        const double way_at_rest = path.at(start[1] + ahead * c, start[2] - ahead * s).along;
        const auto w = wheels.back().getMobilizedBodyIndex();
        SimTK::Constraint::CoordinateCoupler(
            matter, new OnPath(path, ahead, car.radius, way_at_rest, start[0]), Bodies{b, b, b, w},
            Coordinates{index(0), index(1), index(2), index(0)});
    }
    SimTK::Force::Custom(forces, friction);
    system.realizeTopology();
}

} // namespace

Heat run(const Car& car, const Lane& lane, double accuracy) {
    const CentrePath path(lane, car.radius);
    auto* given = new GivenLoads(car, lane, path); // the mechanism owns it
    Mechanism twin(car, lane, path, given);
    given->mechanism = &twin;
    auto* found = new FoundLoads(car, lane, path, twin, *given);
    Mechanism mechanism(car, lane, path, found);
    found->mechanism = &mechanism;

    SimTK::State state = mechanism.at_start();
    mechanism.system.realize(state, SimTK::Stage::Position);
    SimTK::RungeKuttaMersonIntegrator integrator(mechanism.system);
    integrator.setAccuracy(accuracy);
    integrator.setConstraintTolerance(accuracy * 1e-2);
    integrator.initialize(state);

    // On the level the nose's foot is straight below it.
    const auto nose = [&](const SimTK::State& now) {
        const Vec3 q = mechanism.chassis.getQ(now), u = mechanism.chassis.getU(now);
        const double x = car.nose_x, z = car.nose_z - car.radius;
        return Vec2(q[1] + x * std::cos(q[0]) - z * std::sin(q[0]),
                    u[1] - u[0] * (x * std::sin(q[0]) + z * std::cos(q[0])));
    };
    // Steps of a millisecond; the last one is closed by the cubic through both ends.
    constexpr double step = 1e-3;
    double time = 0;
    Vec2 before = nose(state);
    for (int n = 1; n < 20000; ++n) {
        integrator.stepTo(n * step);
        const SimTK::State& now = integrator.getState();
        const Vec2 after = nose(now);
        if (after[0] >= lane.level) {
            double low = 0, high = 1;
            for (int halving = 0; halving < 60; ++halving) {
                const double h = 0.5 * (low + high);
                const double x = before[0] * (1 + 2 * h) * (1 - h) * (1 - h) +
                                 after[0] * h * h * (3 - 2 * h) +
                                 step * (before[1] * h * (1 - h) * (1 - h) - after[1] * h * h * (1 - h));
                (x < lane.level ? low : high) = h;
            }
            time = (n - 1 + low) * step;
            return {time, before[1] + low * (after[1] - before[1])};
        }
        before = after;
    }
    return {};
}

} // namespace rampwright::multibody

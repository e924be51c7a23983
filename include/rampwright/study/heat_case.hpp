#pragma once

#include <rampwright/air/air.hpp>
#include <rampwright/car/car_model.hpp>
#include <rampwright/heat/heat.hpp>

#include <memory>

namespace rampwright {

/// One car on one track in one air, before anything is computed: the values that studies vary. A plain value.
struct HeatCase {
    CarModel car;
    TrackPlan track;
    AirState air;
};

/// @throws Problem as build_car does.
HeatCase make_case(const Project& project, std::size_t car);

/// A case worked out up to the start: everything but the heat itself.
struct ReadyHeat {
    CarOnWheels wheels;
    Standing level;
    Air air;
    std::shared_ptr<const Track> track; ///< the course refers to it
    Guide guide;
    HeatCar car;
    Course course;
};

/// @param track the track of `heat_case.track`, where a study that does not vary it has it already.
/// @throws Problem where car or track cannot be computed.
ReadyHeat make_ready(const HeatCase& heat_case, std::shared_ptr<const Track> track = nullptr);

/// The clock's reading for a case: start to finish plus the clock's offset, s; none where the car stops
/// short.
std::optional<double> clock_time(const HeatCase& heat_case, std::shared_ptr<const Track> track = nullptr);

/// Clearance between the rail and the inner faces of the front wheels on each side, m.
double side_gap(const CarOnWheels& car, const LaneRail& rail);

} // namespace rampwright

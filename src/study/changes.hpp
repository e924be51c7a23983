#pragma once

#include <rampwright/study/heat_case.hpp>

/// What a builder changes, as changes of a case: for sensitivities and steps. Amounts in SI.
namespace rampwright {

/// A wheel of that mass, its inertia in proportion, and the car's part with it.
void set_wheel_mass(HeatCase& c, Corner corner, double mass);

/// Every wheel heavier by `amount`, its inertia in proportion.
void add_wheel_mass(HeatCase& c, double amount);

/// Moves the balance point: every part but axles and wheels, or the measured balance where there is one.
void move_balance(HeatCase& c, double amount);

/// More weight at the balance point.
void add_mass(HeatCase& c, double amount);

/// Cants both touching wheels of an axle further, outer ends up.
void cant_axle(HeatCase& c, bool front, double amount);

/// Turns the touching front wheel further the way it already steers (left where it runs straight).
void steer_front(HeatCase& c, double amount);

} // namespace rampwright

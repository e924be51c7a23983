#pragma once

#include <numbers>

namespace rampwright {

/// Standard acceleration of gravity, m/s² (3rd CGPM, 1901; definition).
inline constexpr double standard_gravity = 9.80665;

/// International inch (1959; definition), m.
inline constexpr double inch = 0.0254;

/// International avoirdupois pound (1959; definition) and its sixteenth, kg.
inline constexpr double pound = 0.45359237;
inline constexpr double ounce = pound / 16;

inline constexpr double degree = std::numbers::pi / 180;
inline constexpr double millimetre = 1e-3;
inline constexpr double gram = 1e-3;

} // namespace rampwright

#pragma once

#include <rampwright/bench/wheel_table.hpp>
#include <rampwright/units/quantity.hpp>

#include <array>

namespace rampwright::ui {

/// What the columns of the table of wheels measure, in the order of `all_wheel_columns`.
inline constexpr std::array<Quantity, all_wheel_columns.size()> wheel_column_quantity{
    Quantity::mass, Quantity::length, Quantity::length, Quantity::length, Quantity::time};

} // namespace rampwright::ui

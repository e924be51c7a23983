#pragma once

#include <rampwright/car/wood_memo.hpp>
#include <rampwright/results/figures.hpp>

namespace rampwright {

/// compute_figures for whoever asks again and again while a car is changed: the same figures, sooner where the
/// memo knows the wood already. @throws Problem likewise.
Figures compute_figures(const Project& project, std::size_t car, WoodMemo& memo);

} // namespace rampwright

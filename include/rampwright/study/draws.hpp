#pragma once

#include <rampwright/results/figures.hpp>
#include <rampwright/study/inputs.hpp>

#include <array>
#include <cstdint>
#include <functional>
#include <vector>

namespace rampwright {

/// A standard normal number that depends on nothing but these three: the same at any number of threads, in
/// any order. Counter-based (SplitMix64's finaliser over the three, Box-Muller).
double standard_normal(std::uint64_t seed, std::uint64_t draw, std::uint64_t stream);

/// A stream's number from its name (FNV-1a).
std::uint64_t stream_of(std::string_view name);

struct DrawSettings {
    std::size_t draws = 10000;
    std::uint64_t seed = 1;
    unsigned threads = 0; ///< 0: as many as the machine has
    /// Called now and then from the calling thread with the part done; false cancels.
    std::function<bool(double)> keep_going;
};

/// One car's heats under drawn inputs. Times in s on the clock; a car that stops short has infinity.
struct CarDraws {
    std::vector<double> expected; ///< what the inputs make of the time, without a run's own scatter
    std::vector<double> heat;     ///< one heat each: scatter and the clock's offset included
    std::vector<Share> shares;    ///< first-order Sobol indices of `heat`, ranked
};

struct Draws {
    std::vector<CarDraws> cars; ///< in the order asked for
    bool cancelled = false;
};

/// Draws every input of the cars together: what they share is drawn once for all of them, what is a car's own
/// is drawn apart. @throws Problem as make_ready does for the nominal cases.
Draws run_draws(const Project& project, const std::vector<std::size_t>& cars, const DrawSettings& settings);

/// What draws of one car say of a single heat, over those that finish.
struct DrawnHeat {
    double mean = 0, sigma = 0;         ///< s
    std::array<double, 2> interval95{}; ///< s, from the 2.5 % and 97.5 % quantiles
    std::size_t stopped = 0;            ///< draws in which the car stops short
};
DrawnHeat summarise(const CarDraws& draws);

/// The figures with sigma, interval and shares from draws instead of first order.
Figures with_draws(Figures figures, const CarDraws& draws);

/// Two cars under the same draws.
struct Versus {
    double mean_gap = 0;     ///< s, expected time of the second less the first
    double sigma_gap = 0;    ///< s, of the expected times' gap
    double first_wins = 0;   ///< chance in one heat, ties count half
    double first_better = 0; ///< chance that its expected time is the smaller one
    double gap_at_finish =
        0; ///< m, how far the slower one has still to go when the faster one finishes; positive: first leads
    std::size_t draws = 0;
    std::uint64_t seed = 0;
};
Versus compare(const Project& project, std::size_t first, std::size_t second, const DrawSettings& settings);
/// The same from draws of the two that were taken already, with this seed and not cancelled.
Versus compare(const Project& project, std::size_t first, std::size_t second, const Draws& draws,
               std::uint64_t seed);

/// First-order Sobol index of y for one input known by its standard normal numbers, from the sample itself:
/// the variance of y's mean over equally filled classes of the input, less what chance alone would leave;
/// standard error from blocks. @param z, y of equal length.
struct SobolIndex {
    double value = 0, standard_error = 0;
};
SobolIndex first_order_index(const std::vector<double>& z, const std::vector<double>& y);

} // namespace rampwright

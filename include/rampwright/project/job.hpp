#pragma once

#include <rampwright/project/edits.hpp>

#include <array>
#include <string_view>

/// The job as a path: its steps, and how far each is with a car. Kept apart from the plan's values, since no
/// figure depends on it.
namespace rampwright {

/// The order in which a car is made.
enum class JobStep { agree, shape, roll, load, aim, run, paper };
inline constexpr std::array all_job_steps{JobStep::agree, JobStep::shape, JobStep::roll, JobStep::load,
                                          JobStep::aim,   JobStep::run,   JobStep::paper};
/// The step's name in the file: "agree", "shape" and so on.
std::string_view to_string(JobStep step);

/// How a step stands. It is decided where the person said so or typed what was measured, never because a
/// value merely differs from a default.
struct StepState {
    bool confirmed = false;            ///< the car's `decided` in the file names it
    std::vector<std::string> measured; ///< JSON pointers of the measured values that decide it
    std::vector<std::string> usual; ///< JSON pointers of its values that are the usual ones, not the person's
    bool decided() const { return confirmed || !measured.empty(); }
};

/// @param project what `document` reads as.
/// @throws Problem where there is no such car.
StepState step_state(const Document& document, const Project& project, std::size_t car, JobStep step);

/// Confirms a step of a car, or takes that back. The file keeps it: `decided`, in the order of the job.
Edit set_decided(const Document& document, std::size_t car, JobStep step, bool decided);

} // namespace rampwright

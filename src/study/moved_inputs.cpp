#include "study/moved_inputs.hpp"

namespace rampwright {

MovedInputs::MovedInputs(const Project& project, const HeatCase& heat_case)
    : heat_case_(heat_case),
      inputs_(list_inputs(project, heat_case)),
      track_(std::make_shared<const Track>(heat_case.track)),
      nominal_(clock_time(heat_case, track_)),
      varied_(heat_case) {}

std::optional<double> MovedInputs::time(std::span<const Deviation> moved) {
    varied_ = heat_case_;
    bool other_track = false;
    for (const Deviation& each : moved) {
        const Input& input = inputs_[each.input];
        input.set(varied_, input.at(each.z));
        other_track |= input.changes_track;
    }
    return clock_time(varied_, other_track ? nullptr : track_);
}

} // namespace rampwright

#pragma once

#include <rampwright/study/spread.hpp>

#include <memory>

namespace rampwright {

/// A case's clock time with some of its inputs moved. What all those heats share, the list of inputs, the
/// track and the nominal time, is worked out once. The case must outlive it.
class MovedInputs {
public:
    /// @throws Problem as make_ready does.
    MovedInputs(const Project& project, const HeatCase& heat_case);

    const std::vector<Input>& inputs() const { return inputs_; }
    /// s; none where the car stops short.
    const std::optional<double>& nominal() const { return nominal_; }
    /// @param moved by place among `inputs`. None where the car stops short.
    std::optional<double> time(std::span<const Deviation> moved);

private:
    const HeatCase& heat_case_;
    std::vector<Input> inputs_;
    std::shared_ptr<const Track> track_;
    std::optional<double> nominal_;
    HeatCase varied_;
};

/// First order over a case's inputs, the clock's offset and a run's scatter.
FirstOrder propagate(MovedInputs& moved, const TrackPlan& track);

} // namespace rampwright

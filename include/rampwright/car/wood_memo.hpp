#pragma once

#include <rampwright/body/solid.hpp>
#include <rampwright/body/walls.hpp>
#include <rampwright/car/car_model.hpp>

#include <list>
#include <optional>
#include <vector>

namespace rampwright {

/// What follows from the wood alone, kept by whoever computes the same car again and again while something
/// else of it moves. Keyed by the whole shape: where it differs in anything, nothing of it is used, so that
/// an answer is the same with and without. Not for several threads at once.
class WoodMemo {
public:
    /// @throws Problem as rampwright::measure does; that is not kept.
    const BodyMeasure& measure(const BodyShape& shape);
    const std::vector<Wall>& walls(const BodyShape& shape);

private:
    struct Entry {
        BodyShape shape;
        std::optional<BodyMeasure> measure;
        std::optional<std::vector<Wall>> walls;
    };
    Entry& entry(const BodyShape& shape);
    std::list<Entry> entries_; ///< the latest first, a handful
};

/// build_car and check_fit with what is known of the wood; the same answers.
CarModel build_car(const Project& project, std::size_t car, WoodMemo& memo);
std::vector<Finding> check_fit(const Project& project, const CarModel& car, WoodMemo& memo);

} // namespace rampwright

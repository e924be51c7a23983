#pragma once

#include "drawing/car_shape.hpp"

#include <rampwright/study/heat_case.hpp>

#include <QString>
#include <QTransform>

#include <array>
#include <memory>

namespace rampwright::ui {

/// Two nominal heats on one clock, ready to be looked at: where each car is at any time.
class Race {
public:
    /// @throws Problem where a car or the lane cannot be computed.
    Race(const Project& project, std::size_t first, std::size_t second);

    const Track& track() const { return *track_; }
    /// Until the faster one's nose is on the finish line, where the gap is read; where neither gets there,
    /// until both have stopped. s.
    double duration() const { return duration_; }
    QString name(std::size_t which) const { return racers_[which].name; }
    const CarShape& shape(std::size_t which) const { return racers_[which].shape; }
    /// Of the nose's foot point, m from the start line.
    double place(std::size_t which, double time) const;
    /// Takes a car frame's side view (x, z) to the track frame (X, Z) at that time; the car stands with both
    /// axles on the surface.
    QTransform stand(std::size_t which, double time) const;
    /// "Heron leads by 12.3 mm", at that time.
    QString standing_text(double time, UnitSystem units) const;

private:
    struct Racer {
        QString name;
        CarShape shape;
        HeatResult heat;
        double nose_ahead = 0, wheelbase = 0; ///< m, level: of the nose before the rear axle; axle to axle
    };
    std::array<Racer, 2> racers_;
    std::shared_ptr<const Track> track_;
    double duration_ = 0;
};

} // namespace rampwright::ui

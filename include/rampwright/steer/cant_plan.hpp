#pragma once

#include <rampwright/car/car_model.hpp>
#include <rampwright/steer/bent_axle.hpp>

#include <optional>
#include <vector>

namespace rampwright {

/// What one wheel's cant means at the bench, SI (plane geometry).
struct CantRow {
    Corner corner = Corner::rear_left;
    double cant = 0; ///< rad, positive where the axle's outer end is higher
    /// Which end of its play the load drives the wheel to: the axle's head (positive cant) or the wood.
    /// Nothing where it has no cant.
    std::optional<bool> bears_on_head;
    double edge_lift = 0; ///< m, how high the tread's lifted edge is above the lane
    /// Least gap between the inner face and the side of the wood, anywhere within the wheel's disc; the
    /// wood is taken to be as high as its highest point. Negative: it rubs.
    double body_gap = 0;
    /// Least gap between the inner face and the lane's rail, over the rail's height, the car in the middle of
    /// its lane; none without a rail.
    std::optional<double> rail_gap;
    /// The axle that gives the wheel its cant and toe in a straight hole; a drilled hole has the cant itself.
    BentAxle bent;
};

/// The highest point of the wood above its bottom, m.
double highest_wood(const BodyPlan& body);

/// The touching wheels, by corner. @throws Problem as on_wheels does.
std::vector<CantRow> plan_cant(const Project& project, std::size_t car, const CarModel& model);

} // namespace rampwright

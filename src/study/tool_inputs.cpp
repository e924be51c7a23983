#include "study/tool_inputs.hpp"

#include "car/tool_layers.hpp"

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

/// Adds mass integrals to a part: m, m r, and the second moments that make up its inertia.
void add_mass(MassProperties& part, const Moments& extra) {
    const Eigen::Matrix3d& i = part.inertia;
    Moments sum;
    sum.volume = part.mass;
    sum.first = part.mass * part.centre;
    sum.second =
        0.5 * i.trace() * Eigen::Matrix3d::Identity() - i + part.mass * part.centre * part.centre.transpose();
    part = with_density(sum + extra, 1);
}

/// An input that adds so much of a layer to the wood; a negative density takes it away.
Input layer_input(std::string key, double sigma, Moments layer, double density, std::size_t wood) {
    layer.volume *= density;
    layer.first *= density;
    layer.second *= density;
    return {std::move(key), 0, sigma, Spread::normal, 0, Scope::own, [layer, wood](HeatCase& c, double by) {
                Moments extra = layer;
                extra.volume *= by;
                extra.first *= by;
                extra.second *= by;
                add_mass(c.car.parts[wood].properties, extra);
            }};
}

} // namespace

double tool_sigma(double tolerance) {
    return tolerance / std::sqrt(3.0);
}

void add_tools(std::vector<Input>& inputs, const Project& project, const HeatCase& heat_case) {
    const CarModel& car = heat_case.car;
    const CarPlan& plan = project.cars.at(car.car);
    const auto wood = std::find_if(car.parts.begin(), car.parts.end(),
                                   [](const Part& part) { return part.kind == PartKind::body; });
    if (wood == car.parts.end()) return;
    const auto index = static_cast<std::size_t>(wood - car.parts.begin());
    const BodyOutlines outlines(plan.body);
    const BodyShape shape = body_shape(plan, car, outlines);
    const double saw = tool_sigma(project.tools.saw_tolerance),
                 drill = tool_sigma(project.tools.drill_tolerance);
    const auto add = [&](std::string key, double sigma, const Moments& layer, int sense) {
        if (sigma > 0 && layer.volume > 0)
            inputs.push_back(layer_input(std::move(key), sigma, layer, sense * plan.body.density, index));
    };
    add("saw/profile", saw, sawn_layer(plan.body, outlines, shape.cuts, false), 1);
    add("saw/plan", saw, sawn_layer(plan.body, outlines, shape.cuts, true), 1);
    // A pocket's floor is drilled before it is chiselled flat: it lies where the drill stopped.
    for (std::size_t i = 0; i < plan.body.cuts.size(); ++i)
        add("drill/cuts/" + std::to_string(i), drill,
            std::holds_alternative<Bore>(shape.cuts[i]) ? bored_layer(outlines, shape.cuts, i)
                                                        : floor_layer(outlines, shape.cuts, i),
            -1);
}

} // namespace rampwright

#pragma once

#include "explain/along_heat.hpp"
#include "explain/formula.hpp"

#include <rampwright/study/first_order.hpp>
#include <rampwright/units/format.hpp>

#include <vector>

namespace rampwright {

/// What the explanations are made from: the figures, and the values they were made from.
struct Known {
    const Project& project;
    const CarPlan& plan;
    const Figures& figures;
    const HeatCase& heat_case;
    const ReadyHeat& ready;
    const AlongHeat& along;   ///< empty where the car stops short
    const FirstOrder& spread; ///< likewise

    /// As the screen shows it.
    std::string shown(double si, Quantity quantity) const { return format(si, quantity, project.units); }
};

void explain_standing(const Known& known, std::vector<Explanation>& list);
void explain_scale(const Known& known, std::vector<Explanation>& list);
void explain_air(const Known& known, std::vector<Explanation>& list);
void explain_guide(const Known& known, std::vector<Explanation>& list);
void explain_time(const Known& known, std::vector<Explanation>& list);
void explain_extremes(const Known& known, std::vector<Explanation>& list);
void explain_budget(const Known& known, std::vector<Explanation>& list);

} // namespace rampwright

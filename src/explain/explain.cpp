#include "explain/known.hpp"

namespace rampwright {

std::vector<Explanation> explain(const Project& project, std::size_t car, const Figures& figures) {
    const HeatCase heat_case = make_case(project, car);
    const ReadyHeat ready = make_ready(heat_case);
    const bool finished = figures.heat.finished;
    const AlongHeat along =
        finished ? sum_along(ready, project.track, figures.smallest_front_load_at) : AlongHeat{};
    const FirstOrder spread = finished ? propagate(project, heat_case) : FirstOrder{};
    const Known known{project, project.cars[car], figures, heat_case, ready, along, spread};
    std::vector<Explanation> list;
    explain_standing(known, list);
    explain_scale(known, list);
    explain_time(known, list);
    explain_extremes(known, list);
    explain_budget(known, list);
    explain_air(known, list);
    explain_guide(known, list);
    return list;
}

} // namespace rampwright

#include <rampwright/heat/regained.hpp>
#include <rampwright/study/steps.hpp>

namespace rampwright {

Figures complete_figures(const Project& project, std::size_t car) {
    Figures figures = compute_figures(project, car);
    figures.steps = find_steps(project, car);
    if (figures.heat.time) {
        const ReadyHeat ready = make_ready(make_case(project, car));
        figures.budget_time_by_wheel =
            regained_by_wheel(ready.course, ready.car, *figures.heat.time - project.track.clock_offset.value);
    }
    return figures;
}

} // namespace rampwright

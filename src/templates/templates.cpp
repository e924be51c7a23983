#include "car/car_parts.hpp"
#include "templates/stl.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/templates/templates.hpp>

namespace rampwright {

namespace {

std::string solid_file(const CarPlan& plan, const CarModel& car) {
    const BodyShape shape = body_shape(plan, car, BodyOutlines(plan.body));
    try {
        return to_stl(body_mesh(shape), plan.name);
    } catch (const Problem& problem) {
        throw Problem(problem.exit(), car.key + "/body/" + problem.where(), problem.wrong(), problem.remedy(),
                      problem.file());
    }
}

} // namespace

const std::vector<std::string>& template_suffixes() {
    static const std::vector<std::string> suffixes{".svg", ".dxf", ".stl", ".csv"};
    return suffixes;
}

std::string template_file(const Project& project, std::size_t index, std::string_view suffix) {
    const CarPlan& plan = project.cars.at(index);
    const auto made = [&](std::string (*make)(const CarPlan&, const CarModel&)) {
        return make(plan, build_car(project, index));
    };
    if (suffix == ".svg") return made(to_svg);
    if (suffix == ".dxf") return made(to_dxf);
    if (suffix == ".stl") return made(solid_file);
    if (suffix == ".csv") return weight_schedule(build_car(project, index));
    throw Problem(Exit::wrong_call, "-",
                  Core::tr("\"{what}\" is no kind of template file", {{"what", std::string(suffix)}}),
                  Core::tr("end the file's name in .svg, .dxf, .stl or .csv"));
}

} // namespace rampwright

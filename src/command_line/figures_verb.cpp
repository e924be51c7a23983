#include "verbs.hpp"

#include <rampwright/results/figures.hpp>
#include <rampwright/results/table.hpp>

#include <ostream>

namespace rampwright {

namespace {

Exit run(const Arguments& arguments, std::ostream& out, std::ostream&) {
    const std::string& path = arguments.words[0];
    const Project project = open_project(path);
    const std::vector<std::size_t> cars = choose_cars(project, arguments.all("--car"), path);
    Json json{{"format", "rampwright-figures"}, {"version", 1}, {"cars", Json::array()}};
    std::string table;
    for (std::size_t car : cars) {
        try {
            Figures figures = complete_figures(project, car);
            if (arguments.has("--draws") || arguments.has("--seed"))
                figures = with_draws(std::move(figures),
                                     run_draws(project, {car}, draw_settings(arguments)).cars.front());
            if (arguments.has("--json")) {
                json["cars"].push_back(to_json(figures));
                continue;
            }
            if (!table.empty()) table += '\n';
            table += to_table(figures, project.units);
        } catch (const Problem& problem) {
            throw problem.in_file(path);
        }
    }
    out << (arguments.has("--json") ? json.dump(2) + "\n" : table);
    return Exit::done;
}

} // namespace

Verb figures_verb() {
    return {"figures",
            "figures PROJECT [--car NAME]... [--draws N] [--seed S] [--json]",
            "everything computed for a car, for all cars if none is named",
            "  --car NAME   a car's name or id; may be given several times\n"
            "  --draws N    sigma, interval and shares from N draws instead of first order\n"
            "  --seed S     the same seed gives the same numbers (1)\n"
            "  --json       full precision, for scripts; keys as in docs/file-format.md\n",
            {"--car", "--draws", "--seed"},
            {"--json"},
            1,
            run};
}

} // namespace rampwright

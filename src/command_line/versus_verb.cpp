#include "verbs.hpp"

#include <rampwright/results/versus_text.hpp>

#include <ostream>

namespace rampwright {

namespace {

Json to_json(const Versus& v, const std::string& first, const std::string& second) {
    return {{"format", "rampwright-versus"},
            {"version", 1},
            {"first", first},
            {"second", second},
            {"mean_gap_ms", v.mean_gap * 1e3},
            {"sigma_gap_ms", v.sigma_gap * 1e3},
            {"p_first_wins", v.first_wins},
            {"p_first_better", v.first_better},
            {"gap_at_finish_mm", v.gap_at_finish * 1e3},
            {"draws", v.draws},
            {"seed", v.seed}};
}

Exit run(const Arguments& arguments, std::ostream& out, std::ostream&) {
    const std::string& path = arguments.words[0];
    const Project project = open_project(path);
    const std::vector<std::string> names = arguments.all("--car");
    if (names.size() != 2)
        throw Problem(Exit::wrong_call, "-",
                      "'versus' compares two cars and " + std::to_string(names.size()) + " were named",
                      "give --car NAME twice");
    const std::vector<std::size_t> cars = choose_cars(project, names, path);
    Versus versus;
    try {
        versus = compare(project, cars[0], cars[1], draw_settings(arguments));
    } catch (const Problem& problem) {
        throw problem.in_file(path);
    }
    const std::string &first = project.cars[cars[0]].name, &second = project.cars[cars[1]].name;
    if (arguments.has("--json")) {
        out << to_json(versus, first, second).dump(2) << "\n";
        return Exit::done;
    }
    const VersusText text = to_text(versus, project.units);
    out << first << " against " << second << ", " << versus.draws << " draws, seed " << versus.seed << "\n"
        << "  " << first << " is faster by        " << text.gap << ", one sigma " << text.sigma << "\n"
        << "  at the finish it leads by  " << text.lead << "\n"
        << "  it wins one heat           " << text.wins << "\n"
        << "  it is the faster car       " << text.better << "\n";
    return Exit::done;
}

} // namespace

Verb versus_verb() {
    return {"versus",
            "versus PROJECT --car A --car B [--draws N] [--seed S] [--json]",
            "two cars under the same draws: the gap, and the chances",
            "  --car NAME   the first and the second car\n"
            "  --draws N    how many (10000)\n"
            "  --seed S     the same seed gives the same numbers (1)\n"
            "  --json       for scripts\n",
            {"--car", "--draws", "--seed"},
            {"--json"},
            1,
            run};
}

} // namespace rampwright

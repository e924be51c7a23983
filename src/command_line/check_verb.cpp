#include "results/scale_figures.hpp"
#include "verbs.hpp"

#include <rampwright/rules/inspection.hpp>
#include <rampwright/rules/scale_words.hpp>

#include <ostream>

namespace rampwright {

namespace {

/// What one car's inspection prints besides its list.
std::string notes_of(const Project& project, const Figures& figures) {
    std::string text;
    for (const std::string& line : scale_words(project, figures))
        text += "  " + line + "\n";
    if (figures.built) {
        text += "  As built:\n";
        for (const std::string& line : figures.built->words)
            text += "    " + line + "\n";
    }
    return text;
}

/// A broken rule as a message: where it stands, what is wrong, what to do.
void tell_breaches(const Inspection& inspection, const std::string& path, UnitSystem units,
                   std::ostream& err) {
    for (const InspectionRow& row : inspection.rows) {
        if (row.verdict != Verdict::breach) continue;
        const Problem problem(Exit::breaks_rule, "/rules/" + row.code,
                              inspection.car + " breaks a rule, " + row.name + ": " + value_text(row, units) +
                                  " where " + limit_text(row, units) + " is the limit",
                              "change the car, or the rule if the race has another", path);
        err << "rampwright: " << problem.what() << "\n";
    }
}

Exit run(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    const std::string& path = arguments.words[0];
    const Project project = open_project(path);
    Json json{
        {"format", "rampwright-check"}, {"version", 1}, {"note", inspector_decides}, {"cars", Json::array()}};
    std::string table;
    bool broken = false;
    for (const std::size_t car : choose_cars(project, arguments.all("--car"), path)) {
        try {
            const CarModel model = build_car(project, car);
            const Figures figures = compute_figures(project, car);
            const Inspection inspection = inspect(project, model, figures);
            broken = broken || inspection.broken();
            tell_breaches(inspection, path, project.units, err);
            Json one = to_json(inspection);
            one["scale"] = figures.scale ? to_json(*figures.scale) : Json(nullptr);
            one["built"] = figures.built ? to_json(*figures.built) : Json(nullptr);
            json["cars"].push_back(std::move(one));
            table += (table.empty() ? "" : "\n") + to_table(inspection, project.units) +
                     notes_of(project, figures);
        } catch (const Problem& problem) {
            throw problem.in_file(path);
        }
    }
    out << (arguments.has("--json") ? json.dump(2) + "\n" : table);
    return broken ? Exit::breaks_rule : Exit::done;
}

} // namespace

Verb check_verb() {
    return {"check",
            "check PROJECT [--car NAME]... [--json]",
            "the rules of the race and the inspection list; exit status 3 if a rule is broken",
            "  --car NAME   a car's name or id; may be given several times; all cars if none is named\n"
            "  --json       for scripts; keys as in docs/file-format.md\n",
            {"--car"},
            {"--json"},
            1,
            run};
}

} // namespace rampwright

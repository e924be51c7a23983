#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/core/version.hpp>
#include <rampwright/project/document.hpp>
#include <rampwright/results/figures.hpp>

namespace rampwright {

Document with_figures(const Document& document) {
    const InEnglish english;
    const Project project = read_project(document);
    Document result = document;
    for (std::size_t car = 0; car < project.cars.size(); ++car) {
        Json& figures = result.root["cars"][car]["figures"];
        try {
            figures = to_json(complete_figures(project, car));
            figures["program"] = "rampwright " + std::string(version());
        } catch (const Problem& problem) {
            // A plan may be saved half done: what cannot be computed yet says so instead of old numbers.
            figures = Json{{"program", "rampwright " + std::string(version())}, {"problem", problem.what()}};
        }
    }
    return result;
}

} // namespace rampwright

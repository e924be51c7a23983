#include "verbs.hpp"

#include <rampwright/templates/templates.hpp>

#include <algorithm>
#include <filesystem>
#include <ostream>

namespace rampwright {

namespace {

/// The ending of a file's name, in small letters.
std::string suffix_of(const std::string& path) {
    std::string suffix = std::filesystem::path(path).extension().string();
    for (char& c : suffix)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return suffix;
}

Exit run(const Arguments& arguments, std::ostream& out, std::ostream&) {
    const std::vector<std::string> names = arguments.all("--car");
    const std::string* to = arguments.find("--out");
    const auto wrong_call = [](const std::string& wrong, const std::string& remedy) {
        return Problem(Exit::wrong_call, "-", wrong, remedy);
    };
    if (names.size() != 1)
        throw wrong_call("'outline' draws one car and " + std::to_string(names.size()) + " were named",
                         "give --car NAME once");
    if (to == nullptr)
        throw wrong_call("'outline' was not told where to write", "give --out FILE.svg, .dxf, .stl or .csv");
    const auto& known = template_suffixes();
    const std::string suffix = suffix_of(*to);
    if (std::find(known.begin(), known.end(), suffix) == known.end())
        throw wrong_call("--out " + *to + " does not say which kind of file",
                         "end its name in .svg, .dxf, .stl or .csv");

    const std::string& path = arguments.words[0];
    const Project project = open_project(path);
    const std::size_t car = choose_cars(project, names, path).front();
    std::string text;
    try {
        text = template_file(project, car, suffix);
    } catch (const Problem& problem) {
        throw problem.in_file(path);
    }
    write_file(*to, text);
    out << *to << "\n";
    return Exit::done;
}

} // namespace

Verb outline_verb() {
    return {"outline",
            "outline PROJECT --car NAME --out FILE.svg|.dxf|.stl|.csv",
            "templates at 1:1, the body as a solid, the weight schedule",
            "  --car NAME   a car's name or id\n"
            "  --out FILE   .svg  side and top view, 1:1 in millimetres\n"
            "               .dxf  the same on layers, one unit a millimetre\n"
            "               .stl  the finished wood as a closed surface, mm\n"
            "               .csv  every piece with grams, ounces and running total\n"
            "The file's name is printed once it is written. A file of that name is replaced.\n",
            {"--car", "--out"},
            {},
            1,
            run};
}

} // namespace rampwright

#include "verbs.hpp"

#include <charconv>

namespace rampwright {

std::vector<Verb> core_verbs() {
    return {figures_verb(), versus_verb(), check_verb(), outline_verb()};
}

Project open_project(const std::string& path) {
    try {
        return read_project(load_document(path));
    } catch (const Problem& problem) {
        throw problem.file().empty() ? problem.in_file(path) : problem;
    }
}

std::vector<std::size_t> choose_cars(const Project& project, const std::vector<std::string>& names,
                                     const std::string& path) {
    std::vector<std::size_t> chosen;
    for (const std::string& name : names) {
        const CarPlan* car = find_car(project, name);
        if (!car) {
            std::string known;
            for (const CarPlan& other : project.cars)
                known += (known.empty() ? "" : ", ") + other.name;
            throw Problem(Exit::could_not, "/cars", "there is no car named '" + name + "'",
                          "name one of: " + known, path);
        }
        chosen.push_back(std::size_t(car - project.cars.data()));
    }
    if (names.empty())
        for (std::size_t n = 0; n < project.cars.size(); ++n)
            chosen.push_back(n);
    return chosen;
}

namespace {

std::uint64_t whole_number(const std::string& option, const std::string& text, std::uint64_t least,
                           std::uint64_t most) {
    std::uint64_t value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || value < least || value > most)
        throw Problem(Exit::wrong_call, "-", option + " " + text + " is not a whole number it can take",
                      "give one from " + std::to_string(least) + " to " + std::to_string(most));
    return value;
}

} // namespace

DrawSettings draw_settings(const Arguments& arguments) {
    DrawSettings settings;
    if (const std::string* draws = arguments.find("--draws"))
        settings.draws = whole_number("--draws", *draws, 2, 10'000'000);
    if (const std::string* seed = arguments.find("--seed"))
        settings.seed = whole_number("--seed", *seed, 0, ~std::uint64_t(0));
    return settings;
}

} // namespace rampwright

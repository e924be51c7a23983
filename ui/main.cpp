#include "sheet/verb.hpp"
#include "window/program.hpp"

#include <rampwright/command_line/command_line.hpp>

#include <iostream>
#include <string>
#include <vector>

int main(int argc, char** argv) {
    using namespace rampwright;
    const std::vector<std::string> arguments(argv + 1, argv + argc);
    std::vector<Verb> verbs = core_verbs();
    verbs.push_back(ui::sheet_verb());
    if (is_command_line(arguments, verbs)) return run_command_line(arguments, verbs, std::cout, std::cerr);
    try {
        return ui::run_window(ui::read_window_call(arguments), argc, argv);
    } catch (const Problem& problem) {
        std::cerr << "rampwright: " << problem.what() << '\n';
        return static_cast<int>(problem.exit());
    }
}

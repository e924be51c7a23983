#include <rampwright/command_line/command_line.hpp>

#include <iostream>

/// The program without a window: the command line alone.
int main(int count, char** words) {
    using namespace rampwright;
    const std::vector<std::string> arguments(words + 1, words + count);
    const std::vector<Verb> verbs = core_verbs();
    if (!is_command_line(arguments, verbs) && arguments.size() == 1) {
        std::cerr
            << "rampwright: " << arguments[0]
            << ": -: this build has no window to open a project in; see 'rampwright --help' for its verbs\n";
        return int(Exit::wrong_call);
    }
    return run_command_line(arguments, verbs, std::cout, std::cerr);
}

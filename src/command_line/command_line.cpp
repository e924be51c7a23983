#include <rampwright/command_line/command_line.hpp>
#include <rampwright/core/version.hpp>

#include <algorithm>
#include <ostream>

namespace rampwright {

namespace {

Problem wrong_call(const std::string& wrong, const std::string& remedy) {
    return {Exit::wrong_call, "-", wrong, remedy};
}

bool contains(const std::vector<std::string>& list, const std::string& word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

/// The message of a Problem, with the verb for a wrong call and the file for the rest.
void tell(const Problem& problem, std::ostream& err) {
    err << "rampwright: " << problem.what() << "\n";
}

Arguments take_apart(std::span<const std::string> words, const Verb& verb) {
    const std::string see = "see 'rampwright " + verb.name + " --help'";
    Arguments arguments;
    bool only_words = false;
    for (std::size_t n = 0; n < words.size(); ++n) {
        const std::string& word = words[n];
        if (only_words || word.size() < 2 || word[0] != '-') {
            arguments.words.push_back(word);
        } else if (word == "--") {
            only_words = true;
        } else {
            const std::size_t equals = word.find('=');
            const std::string name = word.substr(0, equals);
            if (contains(verb.switches, name) && equals == std::string::npos) {
                arguments.options.emplace_back(name, "");
            } else if (contains(verb.options, name)) {
                if (equals == std::string::npos && n + 1 == words.size())
                    throw wrong_call(name + " takes a value and none follows", see);
                arguments.options.emplace_back(name, equals == std::string::npos ? words[++n]
                                                                                 : word.substr(equals + 1));
            } else {
                throw wrong_call("'" + verb.name + "' has no option " + word, see);
            }
        }
    }
    if (arguments.words.size() != verb.words)
        throw wrong_call("'" + verb.name + "' takes " + std::to_string(verb.words) + " file name, and " +
                             std::to_string(arguments.words.size()) + " were given",
                         see);
    return arguments;
}

void print_help(std::span<const Verb> verbs, std::ostream& out) {
    out << "rampwright: build planning for unpowered gravity racers\n\n"
           "usage: rampwright [PROJECT]          opens the workbench\n";
    for (const Verb& verb : verbs)
        out << "       rampwright " << verb.usage << "\n           " << verb.summary << "\n";
    out << "       rampwright --help | --version\n\n"
           "Exit status: 0 done; 1 could not be done; 2 wrong call; 3 done, and something breaks a rule;\n"
           "4 the file is damaged, not a project, or of a newer version.\n";
}

} // namespace

const std::string* Arguments::find(std::string_view option) const {
    for (auto it = options.rbegin(); it != options.rend(); ++it)
        if (it->first == option) return &it->second;
    return nullptr;
}

std::vector<std::string> Arguments::all(std::string_view option) const {
    std::vector<std::string> values;
    for (const auto& [name, value] : options)
        if (name == option) values.push_back(value);
    return values;
}

bool is_command_line(std::span<const std::string> words, std::span<const Verb> verbs) {
    if (words.empty()) return false;
    if (words[0] == "--help" || words[0] == "-h" || words[0] == "--version") return true;
    return std::any_of(verbs.begin(), verbs.end(), [&](const Verb& verb) { return verb.name == words[0]; });
}

int run_command_line(std::span<const std::string> words, std::span<const Verb> verbs, std::ostream& out,
                     std::ostream& err) {
    try {
        if (words.empty()) throw wrong_call("no verb was given", "see 'rampwright --help'");
        if (words[0] == "--help" || words[0] == "-h") {
            print_help(verbs, out);
            return 0;
        }
        if (words[0] == "--version") {
            out << "rampwright " << version() << "\n";
            return 0;
        }
        const auto verb =
            std::find_if(verbs.begin(), verbs.end(), [&](const Verb& v) { return v.name == words[0]; });
        if (verb == verbs.end())
            throw wrong_call("'" + words[0] + "' is not a verb of this program", "see 'rampwright --help'");
        const auto rest = words.subspan(1);
        if (std::find(rest.begin(), rest.end(), "--help") != rest.end()) {
            out << "usage: rampwright " << verb->usage << "\n" << verb->summary << "\n\n" << verb->help;
            return 0;
        }
        const Exit exit = verb->run(take_apart(rest, *verb), out, err);
        out.flush();
        if (!out)
            throw Problem(Exit::could_not, "-", "the results could not be written",
                          "check where they are sent");
        return int(exit);
    } catch (const Problem& problem) {
        tell(problem, err);
        return int(problem.exit());
    } catch (const std::exception& error) {
        err << "rampwright: -: -: " << error.what() << "; report this with the project file\n";
        return int(Exit::could_not);
    }
}

} // namespace rampwright

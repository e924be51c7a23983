#pragma once

#include <rampwright/core/problem.hpp>

#include <iosfwd>
#include <span>
#include <string>
#include <vector>

namespace rampwright {

/// The words after a verb, taken apart: options with values, switches, and the rest in order.
struct Arguments {
    std::vector<std::string> words;
    std::vector<std::pair<std::string, std::string>>
        options; ///< as given, repeats kept; a switch has no value
    const std::string* find(std::string_view option) const;
    std::vector<std::string> all(std::string_view option) const;
    bool has(std::string_view option) const { return find(option) != nullptr; }
};

/// One verb of the command line. `run` writes results to `out` and messages to `err`.
struct Verb {
    std::string name;
    std::string usage;                 ///< after the program's name
    std::string summary;               ///< one line
    std::string help;                  ///< the whole, for `VERB --help`
    std::vector<std::string> options;  ///< that take a value
    std::vector<std::string> switches; ///< that take none
    std::size_t words = 1;             ///< how many plain words it takes
    Exit (*run)(const Arguments& arguments, std::ostream& out, std::ostream& err);
};

/// The verbs that need no window toolkit, in the order of `--help`.
std::vector<Verb> core_verbs();

/// Whether the first word is a verb or a general option, so that no window is wanted.
bool is_command_line(std::span<const std::string> words, std::span<const Verb> verbs);

/// Runs the words after the program's name. Results go to `out` only, messages to `err` as
/// `rampwright: FILE: WHERE: WHAT IS WRONG; WHAT TO DO`.
/// @return the exit status.
int run_command_line(std::span<const std::string> words, std::span<const Verb> verbs, std::ostream& out,
                     std::ostream& err);

} // namespace rampwright

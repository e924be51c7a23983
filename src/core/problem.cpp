#include <rampwright/core/problem.hpp>

namespace rampwright {

namespace {

std::string message(const std::string& file, const std::string& where, const std::string& wrong,
                    const std::string& remedy) {
    return (file.empty() ? "-" : file) + ": " + (where.empty() ? "-" : where) + ": " + wrong + "; " + remedy;
}

} // namespace

Problem::Problem(Exit exit, std::string where, std::string what_is_wrong, std::string what_to_do,
                 std::string file)
    : std::runtime_error(message(file, where, what_is_wrong, what_to_do)), exit_(exit),
      file_(std::move(file)), where_(std::move(where)), wrong_(std::move(what_is_wrong)),
      remedy_(std::move(what_to_do)) {}

Problem Problem::in_file(const std::string& file) const { return {exit_, where_, wrong_, remedy_, file}; }

} // namespace rampwright

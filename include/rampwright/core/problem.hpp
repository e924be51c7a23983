#pragma once

#include <stdexcept>
#include <string>

namespace rampwright {

/// What the program's exit status says (docs/command-line.md).
enum class Exit { done = 0, could_not = 1, wrong_call = 2, breaks_rule = 3, not_ours = 4 };

/// Something the person can put right: what is wrong, where, and what to do about it.
///
/// Thrown for bad input and for the outside world (files, disks); our own mistakes are asserts.
/// `where` is a JSON pointer, `line L, column C` where the text is not JSON, or `-`.
/// `file` may be empty when thrown and is filled in by whoever knows it.
class Problem : public std::runtime_error {
public:
    Problem(Exit exit, std::string where, std::string what_is_wrong, std::string what_to_do,
            std::string file = {});

    Exit exit() const { return exit_; }
    const std::string& file() const { return file_; }
    const std::string& where() const { return where_; }
    const std::string& wrong() const { return wrong_; }
    const std::string& remedy() const { return remedy_; }

    /// The same problem, told of this file.
    Problem in_file(const std::string& file) const;

private:
    Exit exit_;
    std::string file_, where_, wrong_, remedy_;
};

} // namespace rampwright

#pragma once

#include <string>
#include <vector>

/// What one run of the program did.
struct Ran {
    int exit = -1;
    std::string out, err;
};

/// Runs the program under test with these words, without a display and without a shell.
Ran run_program(const std::vector<std::string>& words);

#pragma once

#include "support/demo.hpp"
#include "support/folder.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/project/document.hpp>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <optional>
#include <string>

namespace rampwright::test {

/// The problem that `action` throws, or nothing.
template <class Action>
std::optional<Problem> problem_of(Action&& action) {
    try {
        action();
    } catch (const Problem& problem) {
        return problem;
    }
    return std::nullopt;
}

} // namespace rampwright::test

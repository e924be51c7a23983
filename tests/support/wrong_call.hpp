#pragma once

#include "support/program.hpp"

#include <catch2/catch.hpp>

/// A wrong call says so on standard error alone, with what to do, and exits with 2.
inline void check_wrong_call(const std::vector<std::string>& call) {
    const Ran ran = run_program(call);
    CAPTURE(call.back(), ran.err);
    CHECK(ran.exit == 2);
    CHECK(ran.out.empty());
    CHECK(ran.err.starts_with("rampwright: "));
    CHECK(ran.err.find("; ") != std::string::npos);
}

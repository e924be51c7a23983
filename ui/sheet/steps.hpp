#pragma once

#include "sheet/job.hpp"

namespace rampwright::ui::paper {

/// A step of the build: who does what, and what to take care of.
struct Step {
    QString what;
    QString child, adult; ///< empty where there is nothing to do for that one
    std::vector<std::string> cautions;
    bool done = false;
};

/// Whether the outline in a view, side or top, is another than the block's own.
bool is_sawn(const Job& job, View view);

/// The steps that this car needs, in order.
std::vector<Step> build_steps(const Job& job);

/// What has to be over how long before the race.
struct Deadline {
    int minutes_before = 0;
    QString what;
    QString left_out; ///< what becomes of it tonight if time is short
};
std::vector<Deadline> deadlines(const Job& job);

} // namespace rampwright::ui::paper

#include <rampwright/core/constants.hpp>
#include <rampwright/results/next_move.hpp>

#include <catch2/catch.hpp>

#include <set>

using namespace rampwright;
using Catch::Contains;

TEST_CASE("the next move says which way to turn by how much, and towards or away from the rail") {
    // Turns are positive clockwise seen from the axle's head (steer/tuning_state.hpp).
    const auto turn = [](double degrees, bool towards) {
        return next_move_text(TuningMove::turn, degrees * degree, towards, UnitSystem::metric);
    };
    for (const bool towards : {true, false}) {
        INFO(towards);
        CHECK_THAT(turn(12.5, towards), Contains("12.50°") && Contains(" clockwise"));
        CHECK_THAT(turn(-12.5, towards), Contains("12.50°") && Contains(" anticlockwise") && !Contains("-"));
        for (const double way : {12.5, -12.5})
            CHECK_THAT(turn(way, towards), Contains(towards ? "towards the rail" : "away from the rail"));
    }
    std::set<std::string> said{turn(12.5, true)};
    for (const TuningMove move :
         {TuningMove::roll, TuningMove::roll_again, TuningMove::bend_more, TuningMove::done})
        CHECK(said.insert(next_move_text(move, {}, true, UnitSystem::metric)).second);
}

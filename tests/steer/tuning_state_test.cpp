#include "support/demo.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/project/edits.hpp>
#include <rampwright/steer/drift_board.hpp>
#include <rampwright/steer/tuning_state.hpp>

#include <catch2/catch.hpp>

#include <cmath>
#include <random>

using namespace rampwright;

TEST_CASE("a mirrored car has a mirrored tuning log") {
    Document right = demo_document();
    // Swift is raised on one side and steers to the other's rail; its mirror image likewise.
    Document left = right;
    Json& car = left.root["cars"][2];
    for (Json& wheel : car["wheels"]) {
        std::string corner = wheel["corner"];
        const auto at = corner.find("left");
        corner = at == std::string::npos ? corner.replace(corner.find("right"), 5, "left")
                                         : corner.replace(at, 4, "right");
        wheel["corner"] = corner;
        if (wheel.contains("toe_deg")) wheel["toe_deg"] = -wheel["toe_deg"].get<double>();
    }
    Json& steer = car["steer"];
    steer["drift_mm"] = -steer["drift_mm"].get<double>();
    steer["turn_deg"] = -steer["turn_deg"].get<double>();
    for (Json& event : steer["log"])
        for (auto& [key, value] : event.items())
            value = -value.get<double>();
    const TuningState a = follow_tuning_log(read_project(right).cars[2], 0.08);
    const TuningState b = follow_tuning_log(read_project(left).cars[2], 0.08);
    CHECK(a.side == -b.side);
    CHECK(a.steer() == Approx(-b.steer()));
    CHECK(a.drift() == Approx(-b.drift()));
    CHECK(a.log.steer_sigma() == Approx(b.log.steer_sigma()));
    CHECK(a.log.rolls() == 3);
}

TEST_CASE("following its moves brings a simulated axle to the target") {
    // A true axle unlike the believed one; readings and hands miss. The simulation is plane geometry alone.
    std::mt19937 random(7);
    std::normal_distribution<double> normal;
    int reached = 0;
    constexpr int cars = 60;
    for (int n = 0; n < cars; ++n) {
        Document document = clear_tuning_log(demo_document(), 2).document;
        const CarPlan plan = read_project(document).cars[2];
        const double wheelbase = plan.axles.front_x - plan.axles.rear_x, over = *plan.steer.over;
        const double bend = (1.7 + 0.3 * normal(random)) * degree;
        double turn = (-24 + 5 * normal(random)) * degree;
        const auto drift = [&] {
            return *drift_from_steer(wheelbase, std::atan(std::tan(bend) * std::sin(turn)), over);
        };
        for (int step = 0; step < 25; ++step) {
            const TuningState state = follow_tuning_log(read_project(document).cars[2], 0.077);
            if (state.log.done()) break;
            TuningEvent event;
            if (const auto next = state.log.rolls() > 0 ? state.next_turn() : std::nullopt) {
                event.turned = *next;
                turn += *next + 2 * degree * normal(random);
            } else {
                event.drift = drift() * (1 + 0.05 * normal(random)) + 0.001 * normal(random);
            }
            document = add_tuning_event(document, 2, event).document;
        }
        const TuningState state = follow_tuning_log(read_project(document).cars[2], 0.077);
        if (state.log.done() && std::abs(drift() - state.target()) <= state.plan.tolerance) ++reached;
    }
    // It says done at nine chances of ten: of 60 cars 54 are expected, and 48 are three sigma fewer.
    CHECK(reached >= 48);
}

TEST_CASE("the next move follows from the log, and towards the rail is where the steer must grow") {
    Document document = clear_tuning_log(demo_document(), 2).document;
    const auto state = [&] { return follow_tuning_log(read_project(document).cars[2], 0.08); };
    CHECK(state().next() == TuningMove::roll);
    CHECK_FALSE(state().next_turn());
    // Half of the drift wanted: more steer, and the turn that by the bent axle's own formula gives more.
    const double side = state().side, half = side * 0.5 * state().plan.target;
    document = add_tuning_event(document, 2, {half, {}}).document;
    REQUIRE(state().next() == TuningMove::turn);
    CHECK(state().towards_rail());
    const auto toe_after = [&] {
        const BentAxle axle = state().log.axle();
        return std::atan(std::tan(axle.bend) * std::sin(axle.turn + side * *state().next_turn()));
    };
    CHECK(toe_after() > state().log.steer());
    document = clear_tuning_log(document, 2).document;
    document = add_tuning_event(document, 2, {2 * side * state().plan.target, {}}).document;
    REQUIRE(state().next() == TuningMove::turn);
    CHECK_FALSE(state().towards_rail());
    CHECK(toe_after() < state().log.steer());
}

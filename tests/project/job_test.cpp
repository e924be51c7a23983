#include "project/helpers.hpp"

#include <rampwright/project/job.hpp>

#include <catch2/catch.hpp>

#include <algorithm>

using namespace rampwright;
using namespace rampwright::test;

namespace {

StepState state(const Document& d, JobStep step, std::size_t car = 0) {
    return step_state(d, read_project(d), car, step);
}

/// The demo with car 0 stripped of all that was measured and confirmed.
Document plain_plan() {
    Document d = demo_document();
    Json& car = d.root["cars"][0];
    for (const char* key : {"as_built", "steer", "decided"})
        car.erase(key);
    car["body"].erase("block_mass_g");
    for (Json& wheel : car["wheels"])
        wheel.erase("spin_inertia_g_mm2");
    d.root["runs"] = Json::array();
    return d;
}

} // namespace

TEST_CASE(
    "a step is decided by the person's word or by a measured value, never by differing from a default") {
    const Document d = plain_plan();
    for (const JobStep step : all_job_steps) {
        INFO(to_string(step));
        CHECK_FALSE(state(d, step).decided());
        const Edit confirmed = set_decided(d, 0, step, true);
        for (const JobStep other : all_job_steps)
            CHECK(state(confirmed.document, other).decided() == (other == step));
        CHECK_FALSE(state(confirmed.document, step, 1).confirmed); // another car
        CHECK(set_decided(confirmed.document, 0, step, false).document == d);
    }
    // Typed, and not what is usual, yet not measured.
    const Document typed = set_value(d, "/cars/0/body/density_kg_m3", 377, "x").document;
    CHECK_FALSE(state(typed, JobStep::shape).decided());

    const std::pair<JobStep, const char*> measured[] = {
        {JobStep::shape, "/cars/0/body/block_mass_g"},
        {JobStep::load, "/cars/0/as_built/front_load_g"},
        {JobStep::load, "/cars/0/as_built/balance_ahead_of_rear_axle_mm"},
        {JobStep::aim, "/cars/0/steer/drift_mm"},
        {JobStep::paper, "/cars/0/as_built/mass_g"},
    };
    for (const auto& [step, pointer] : measured) {
        INFO(pointer);
        const Document weighed = set_value(d, pointer, 21, "Measure").document;
        CHECK(state(weighed, step).measured == std::vector<std::string>{pointer});
        for (const JobStep other : all_job_steps)
            CHECK(state(weighed, other).decided() == (other == step));
    }
    const Document timed = add_run(d, Json{{"car", d.root["cars"][0]["id"]}, {"time_s", 3.05}}).document;
    CHECK(state(timed, JobStep::run).measured == std::vector<std::string>{"/runs/0/time_s"});
    CHECK_FALSE(state(timed, JobStep::run, 1).decided());

    // Of the wheels, each that touches must have been timed.
    Document spun = d;
    Json& wheels = spun.root["cars"][0]["wheels"];
    REQUIRE(wheels.size() == 4);
    for (std::size_t i = 0; i < 4; ++i) {
        wheels[i]["touches"] = true;
        CHECK_FALSE(state(spun, JobStep::roll).decided());
        wheels[i]["spin_inertia_g_mm2"] = 250;
    }
    CHECK(state(spun, JobStep::roll).measured.size() == 4);
}

TEST_CASE("the file keeps what is decided, in the order of the job, and refuses a word that is no step") {
    Document d = set_decided(plain_plan(), 0, JobStep::load, true).document;
    d = set_decided(d, 0, JobStep::agree, true).document;
    CHECK(d.root["cars"][0]["decided"].dump() == R"(["agree","load"])");
    CHECK(state(parse_document(to_text(d)), JobStep::agree).confirmed);
    CHECK(set_decided(d, 0, JobStep::aim, true).name == "Confirm step: aim");

    d.root["cars"][0]["decided"] = {"agree", "lunch"};
    const auto refused = problem_of([&] { read_project(d); });
    REQUIRE(refused);
    CHECK(refused->where() == "/cars/0/decided/1");
    const auto missing = problem_of([] { set_decided(demo_document(), 9, JobStep::aim, true); });
    REQUIRE(missing);
    CHECK_THAT(missing->wrong(), Catch::Contains("no such car"));
}

TEST_CASE("every usual value that stands in is open at one step, and typing it closes it there") {
    const Document d = plain_plan();
    const Project p = read_project(d);
    std::size_t open = 0, of_other_cars = 0;
    for (const JobStep step : all_job_steps)
        open += step_state(d, p, 0, step).usual.size();
    for (const Assumed& assumed : p.assumed)
        of_other_cars += assumed.key.starts_with("/cars/") && !assumed.key.starts_with("/cars/0/");
    CHECK(open + of_other_cars == p.assumed.size());

    Document bare = d;
    bare.root["cars"][0]["body"].erase("density_kg_m3");
    const auto usual = state(bare, JobStep::shape).usual;
    REQUIRE(std::find(usual.begin(), usual.end(), "/cars/0/body/density_kg_m3") != usual.end());
    const auto after =
        state(set_value(bare, "/cars/0/body/density_kg_m3", 400, "x").document, JobStep::shape).usual;
    CHECK(after.size() + 1 <= usual.size());
    CHECK(std::find(after.begin(), after.end(), "/cars/0/body/density_kg_m3") == after.end());
}

TEST_CASE("the putty for the last tenths is settled where its fields stand: at the scale, not at the run") {
    Document bare = plain_plan();
    bare.root.erase("tools");
    const auto has = [&](JobStep step, const std::string& pointer) {
        const auto usual = state(bare, step).usual;
        return std::find(usual.begin(), usual.end(), pointer) != usual.end();
    };
    for (const char* pointer : {"/tools/putty", "/tools/pellet_diameter_mm"}) {
        INFO(pointer);
        for (const JobStep step : all_job_steps)
            CHECK(has(step, pointer) == (step == JobStep::agree));
    }
}

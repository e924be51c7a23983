#include "project/helpers.hpp"

#include <rampwright/materials/materials.hpp>
#include <rampwright/project/edits.hpp>
#include <rampwright/results/figures.hpp>

#include <catch2/catch.hpp>

#include <algorithm>

using namespace rampwright;
using namespace rampwright::test;
using Catch::Contains;

namespace {

/// The demo with one value changed (JSON text), or taken away where `value` is empty.
Document with(const std::string& pointer, const std::string& value) {
    Document document = demo_document();
    const Json::json_pointer place(pointer);
    if (value.empty())
        document.root[place.parent_pointer()].erase(place.back());
    else
        document.root[place] = Json::parse(value);
    return document;
}

struct Row {
    const char* pointer;
    const char* value; ///< JSON
    const char* wrong; ///< part of what is said to be wrong
    const char* where = nullptr;
};

// Values beside the format's own rules: type, range, words, and what must agree with each other.
const Row refused[] = {
    {"/title", "3", "the number 3 stands where a text"},
    {"/notes", "[]", "a list stands where a text"},
    {"/units", "\"furlong\"", "\"furlong\" is not known"},
    {"/units", "1", "the number 1 stands where a word"},
    {"/race", "\"soon\"", "the text \"soon\" stands where an object"},
    {"/race", R"({"date": "1 May"})", "\"1 May\" is not a date", "/race/date"},
    {"/race", R"({"date": "2026-02-14", "starts": "24:00"})", "\"24:00\" is not a time", "/race/starts"},
    {"/race", R"({"date": "2026-02-14", "starts": "7 pm"})", "\"7 pm\" is not a time", "/race/starts"},
    {"/race", R"({"starts": "18:30"})", "is missing", "/race/date"},
    {"/cars/0/ballast/0/held", "\"hope\"", "\"hope\" is no way of holding a weight"},
    {"/cars/0/ballast/0/held_g", "-0.1", "-0.1 g is out of range"},
    {"/cars/0/ballast/0/held_g", "\"a dab\"", "the text \"a dab\" stands where a number"},
    {"/rules", "[]", "a list stands where an object"},
    {"/rules/max_mass_g", "0", "0 g is out of range"},
    {"/rules/max_mass_g", "\"141.7\"", "the text \"141.7\" stands where a number"},
    {"/rules/max_length_mm", "-1", "-1 mm is out of range"},
    {"/rules/wheelbase_mm/min", "-5", "-5 mm is out of range"},
    {"/rules/wheelbase_mm", R"({"min": 200, "max": 100})", "above the largest"},
    {"/rules/wheels_touching", "2", "2 is out of range"},
    {"/rules/wheels_touching", "3.5", "3.5 is not a whole number"},
    {"/rules/allow/bent_axles", "\"yes\"", "the text \"yes\" stands where true or false"},
    {"/rules/wheel_diameter_mm", R"({"min": 31, "max": 29})", "above the largest"},
    {"/rules/wheel_diameter_mm/max", "0", "0 mm is out of range"},
    {"/rules/wheel_min_width_mm", "-1", "-1 mm is out of range"},
    {"/rules/max_nose_height_mm", "0", "0 mm is out of range"},
    {"/rules/lubricants", "\"oil\"", "the text \"oil\" stands where a list"},
    {"/rules/built_after", "\"soon\"", "\"soon\" is not a date"},
    {"/rules/words", R"({"max_mass_g": "x"})", "stands where an object", "/rules/words/max_mass_g"},
    {"/rules/house", "[{}]", "missing", "/rules/house/0/text"},
    {"/scale/division_g", "0", "0 g is out of range"},
    {"/scale/worse/division_g", "0", "0 g is out of range"},
    {"/scale/worse/reads", "\"up\"", "\"up\" is not known"},
    {"/tools/putty", "\"soup\"", "\"soup\" is not in the table"},
    {"/tools/pellet_diameter_mm", "0", "0 mm is out of range"},
    {"/cars/0/built_on", "\"2026-13-01\"", "is not a date"},
    {"/cars/0/as_built/readings", R"({"whole_g": [0]})", "0 g is out of range",
     "/cars/0/as_built/readings/whole_g/0"},
    {"/scale/reads", "\"up\"", "\"up\" is not known"},
    {"/scale/offset_g", "true", "true stands where a number"},
    {"/track", "\"long\"", "the text \"long\" stands where an object"},
    {"/track/start_height_mm", "0", "0 mm is out of range"},
    {"/track/first_slope_deg", "25", "a positive first slope"},
    {"/track/first_slope_deg", "-81", "-81 ° is out of range"},
    {"/track/pieces", "[]", "the list of pieces is empty"},
    {"/track/pieces", "null", "the track has no shape", "/track"},
    {"/track/pieces", "{}", "an object stands where a list"},
    {"/track/measured_mm", "[[0,0],[1,0],[2,0],[3,0]]", "given twice", "/track"},
    {"/track/pieces/0/kind", "\"loop\"", "\"loop\" is not known"},
    {"/track/pieces/0/kind", "null", "missing"},
    {"/track/pieces/0/length_mm", "0", "0 mm is out of range"},
    {"/track/pieces/0/length_mm", "null", "missing"},
    {"/track/pieces/1/radius_mm", "10", "10 mm is out of range"},
    {"/track/pieces/1/turn_deg", "0", "does not turn"},
    {"/track/pieces/1/turn_deg", "-91", "-91 ° is out of range"},
    {"/track/pieces/1/easing_mm", "600", "longer than the arc"},
    {"/track/start_line_mm", "-1", "-1 mm is out of range"},
    {"/track/finish_line_mm", "300", "not beyond the start line"},
    {"/track/rail", "true", "true stands where an object"},
    {"/track/rail/width_mm", "0", "0 mm is out of range"},
    {"/track/quality", "\"Rough\"", "\"Rough\" is not known"},
    {"/track/gravity_m_s2", "1.62", "1.62 m/s² is out of range"},
    {"/track/clock_offset_s", "2", "2 s is out of range"},
    {"/track/run_scatter_s", "-0.001", "-0.001 s is out of range"},
    {"/air/temperature_c", "293.15", "293.15 °C is out of range"},
    {"/air/pressure_hpa", "101325", "101325 hPa is out of range"},
    {"/air/humidity_pct", "101", "101 % is out of range"},
    {"/shelf", "{}", "an object stands where a list"},
    {"/shelf/0/shape", "\"cone\"", "\"cone\" is not known"},
    {"/shelf/0/size_mm", "[1, 2]", "a list of 2 where 3 are needed"},
    {"/shelf/0/size_mm/1", "0", "0 mm is out of range"},
    {"/shelf/0/mass_g", "-1", "-1 g is out of range"},
    {"/shelf/0/count", "1.5", "1.5 is not a whole number"},
    {"/shelf/6/size_mm", "[1]", "a list of 1 where 0 are needed"},
    {"/shelf/6/mass_g", "null", "missing"},
    {"/tools/drill_bits_mm/0", "\"2.2\"", "the text \"2.2\" stands where a number"},
    {"/tools/saw_kerf_mm", "11", "11 mm is out of range"},
    {"/model/journal", "0.1", "the number 0.1 stands where an object"},
    {"/model/journal", R"({"value": -0.1})", "-0.1 is out of range", "/model/journal/value"},
    {"/model/rolling", R"({"sigma": "x"})", "the text \"x\" stands where a number", "/model/rolling/sigma"},
    {"/cars", "{}", "an object stands where a list"},
    {"/cars/1", "7", "the number 7 stands where an object"},
    {"/cars/1/id", "\"bittern\"", "two cars have the id \"bittern\""},
    {"/cars/0/number", "1.5", "the number 1.5 stands where a text"},
    {"/cars/0/done", "[1]", "the number 1 stands where a text", "/cars/0/done/0"},
    {"/cars/0/body/wood", "\"unobtainium\"", "\"unobtainium\" is not in the table"},
    {"/cars/0/body/density_kg_m3", "0.392", "0.392 kg/m³ is out of range"},
    {"/cars/0/body/moisture_pct", "-1", "-1 % is out of range"},
    {"/cars/0/body/block_mass_g", "0", "0 g is out of range"},
    {"/cars/0/body/block_mm", "[178, 44]", "a list of 2 where 3 are needed"},
    {"/cars/0/body/block_mm/2", "-32", "-32 mm is out of range"},
    {"/cars/0/body/profile_mm", "[[0,0],[1,1]]", "an outline of 2 points"},
    {"/cars/0/body/profile_mm/0", "[1]", "a point of 1 parts"},
    {"/cars/0/body/profile_mm/0", R"([0, 0, "round"])", "\"round\" is not known",
     "/cars/0/body/profile_mm/0/2"},
    {"/cars/0/body/plan_mm/1/0", "1e6", "1000000 mm is out of range"},
    {"/cars/0/body/edge_radius_mm", "-1", "-1 mm is out of range"},
    {"/cars/0/body/cuts/0/kind", "\"slot\"", "\"slot\" is not known"},
    {"/cars/0/body/cuts/0/to_mm", "null", "missing"},
    {"/cars/0/body/cuts/0/to_mm/2", "8", "without length, width or depth", "/cars/0/body/cuts/0/to_mm"},
    {"/cars/2/body/cuts/1/name", "\"tail pocket\"", "two cuts of this car have the name"},
    {"/cars/0/body/finish_g", "101", "101 g is out of range"},
    {"/cars/0/axles/front_x_mm", "25", "not at least 10 mm ahead"},
    {"/cars/0/axles/rear_x_mm", "1e999", ""},
    {"/cars/0/axles/head_diameter_mm", "2.2", "not wider than its shank"},
    {"/cars/0/axles/holes", "\"drill\"", "\"drill\" is not known"},
    {"/cars/0/wheels/1/corner", "\"rear-left\"", "two wheels at rear-left"},
    {"/cars/0/wheels/1/corner", "\"middle\"", "\"middle\" is not known"},
    {"/cars/0/wheels/1/corner", "null", "missing"},
    {"/cars/0/wheels", "[]", "no wheel at rear-left"},
    {"/cars/0/wheels/0/mass_g", "0", "0 g is out of range"},
    {"/cars/0/wheels/0/bore_diameter_mm", "2.2", "not wider than the axle's shank (2.2 mm)"},
    {"/cars/0/wheels/0/bore_diameter_mm", "31", "wider than the wheel"},
    {"/cars/0/wheels/0/touches", "1", "the number 1 stands where true or false"},
    {"/cars/0/wheels/0/touches", "false", "the rear-left wheel does not touch", "/cars/0/wheels"},
    {"/cars/2/wheels/2/touches", "false", "neither front wheel touches", "/cars/2/wheels"},
    {"/cars/0/wheels/0/cant_deg", "21", "21 ° is out of range"},
    {"/cars/0/wheels/0/hub", "\"oval\"", "\"oval\" is not known"},
    {"/cars/0/wheels/0/hub_ring_mm", "[2.6, 1.3]", "not below its outer one"},
    {"/cars/0/wheels/0/spin_inertia_g_mm2", "0", "0 g mm² is out of range"},
    {"/cars/0/ballast/0/in", "\"boot\"", "no cut of this car has the name \"boot\""},
    {"/cars/0/ballast/0/at_mm", "null", "missing"},
    {"/cars/0/ballast/0/at_mm/0", "\"x\"", "the text \"x\" stands where a number"},
    {"/cars/0/ballast/0", R"({"shape": "putty", "size_mm": [], "mass_g": 3})", "missing",
     "/cars/0/ballast/0/in"},
    {"/cars/0/ballast/0", R"({"size_mm": [1, 1, 1], "material": "cheese", "at_mm": [0, 0, 0]})",
     "\"cheese\" is not in the table", "/cars/0/ballast/0/mass_g"},
    {"/cars/0/ballast/0/turned_deg", "361", "361 ° is out of range"},
    {"/cars/0/drag/class", "\"brick\"", "\"brick\" is not known"},
    {"/cars/0/drag/coefficient", "-0.1", "-0.1 is out of range"},
    {"/cars/0/as_built", R"({"mass_g": 0})", "0 g is out of range", "/cars/0/as_built/mass_g"},
    {"/cars/2/steer/over_mm", "0", "0 mm is out of range"},
    {"/runs/0/car", "\"heron\"", "no car has the id \"heron\""},
    {"/runs/0/car", "null", "missing"},
    {"/runs/0/date", "\"14.2.2026\"", "is not a date"},
    {"/runs/0/date", "\"2026-13-01\"", "is not a date"},
    {"/runs/0/time_s", "0", "0 s is out of range"},
    {"/runs/0/time_s", "null", "missing"},
};

const Assumed* find_assumed(const Project& project, const std::string& key) {
    const auto found = std::find_if(project.assumed.begin(), project.assumed.end(),
                                    [&](const Assumed& a) { return a.key == key; });
    return found == project.assumed.end() ? nullptr : &*found;
}

} // namespace

TEST_CASE("a wrong value is refused with its pointer, what is wrong and what to do") {
    CHECK(std::size(refused) >= 60);
    for (const Row& row : refused) {
        INFO(row.pointer << " = " << row.value);
        if (std::string(row.value) == "1e999") { // no JSON number: the parser's business
            CHECK_THROWS_AS(parse_document(R"({"format": "rampwright-project", "version": 1, "x": 1e999})"),
                            Problem);
            continue;
        }
        const auto problem = problem_of([&] { read_project(with(row.pointer, row.value)); });
        REQUIRE(problem);
        CHECK(problem->exit() == Exit::not_ours);
        CHECK(problem->where() == (row.where != nullptr ? row.where : row.pointer));
        CHECK_THAT(problem->wrong(), Contains(row.wrong));
        CHECK(problem->remedy().size() > 5);
    }
}

TEST_CASE("an unknown word is answered with the words there are") {
    const auto problem = problem_of([] { read_project(with("/track/quality", "\"bumpy\"")); });
    REQUIRE(problem);
    CHECK(problem->remedy() == "use one of \"rough\", \"fair\", \"smooth\"");
    const auto wood = problem_of([] { read_project(with("/cars/0/body/wood", "\"rubber\"")); });
    REQUIRE(wood);
    CHECK_THAT(wood->remedy(), Contains("\"eastern white pine\"") && Contains("block_mass_g"));
}

TEST_CASE("a number that is not finite is refused even in a tree made by hand") {
    for (const double value :
         {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(),
          -std::numeric_limits<double>::infinity()}) {
        Document document = demo_document();
        document.root["cars"][0]["axles"]["rear_x_mm"] = value;
        const auto problem = problem_of([&] { read_project(document); });
        REQUIRE(problem);
        CHECK(problem->where() == "/cars/0/axles/rear_x_mm");
    }
}

TEST_CASE("the demo reads in SI units") {
    const Project p = read_project(demo_document());
    CHECK(p.title == "Harbour Hall race night");
    REQUIRE(p.cars.size() == 3);
    CHECK(p.cars[2].name == "Swift");
    CHECK(find_car(p, "Swift") == &p.cars[2]);
    CHECK(find_car(p, "swift") == &p.cars[2]);
    CHECK(find_car(p, "Heron") == nullptr);
    CHECK(*p.rules.max_mass == Approx(0.141747).epsilon(1e-12));
    CHECK(*p.rules.wheelbase.max == Approx(0.150).epsilon(1e-12));
    CHECK(p.track.first_slope == Approx(-0.436332312998582).epsilon(1e-12)); // 25 degrees
    CHECK(p.air.temperature == Approx(293.15).epsilon(1e-12));
    CHECK(p.air.pressure == Approx(101325).epsilon(1e-12));
    CHECK(p.air.humidity == Approx(0.5));
    CHECK(p.cars[0].axles.rear_x == Approx(0.022).epsilon(1e-12));
    CHECK(p.cars[1].wheels[0].cant == Approx(3 * 0.017453292519943295).epsilon(1e-12));
    CHECK_FALSE(p.cars[2].wheels[3].touches);
    CHECK(p.cars[2].wheels[3].raised == Approx(0.0015).epsilon(1e-12));
    CHECK(p.runs.size() == 9);
    // A weighed block wins: 92 g of 178 x 44 x 32 mm.
    CHECK(p.cars[2].body.density == Approx(0.092 / (0.178 * 0.044 * 0.032)).epsilon(1e-12));
    CHECK(find_assumed(p, "/cars/2/body/density_kg_m3") == nullptr);
}

TEST_CASE("what the file leaves out takes its default and is listed") {
    const Document bare = parse_document(R"({"format": "rampwright-project", "version": 1,
        "track": {"pieces": [{"kind": "straight", "length_mm": 2500},
                             {"kind": "arc", "radius_mm": 1200, "turn_deg": 25},
                             {"kind": "straight", "length_mm": 8000}]},
        "cars": [{}]})");
    const Project p = read_project(bare);
    REQUIRE(p.cars.size() == 1);
    const CarPlan& car = p.cars[0];
    CHECK(car.id == "car-1");
    CHECK(p.units == UnitSystem::metric);
    CHECK(p.track.first_slope == Approx(-25 * 0.017453292519943295).epsilon(1e-12));
    // Two straights and an arc of radius times angle.
    CHECK(p.track.finish_line == Approx(2.5 + 1.2 * 0.436332312998582 + 8.0).epsilon(1e-12));
    CHECK_FALSE(p.track.rail);
    CHECK(p.track.gravity == 9.80665);
    CHECK(car.body.density == Approx(392).epsilon(1e-3)); // eastern white pine, from the table of woods
    CHECK(car.body.profile.size() == 4);
    CHECK(car.axles.front_x - car.axles.rear_x == Approx(0.111).epsilon(1e-12));
    CHECK(car.axles.hole_diameter == car.axles.shank_diameter);
    for (const WheelPlan& wheel : car.wheels) {
        CHECK(wheel.touches);
        CHECK(wheel.bore_diameter > car.axles.shank_diameter);
        CHECK(wheel.hub_ring.y() > wheel.hub_ring.x());
    }
    CHECK(car.drag.body_class == "block");

    const struct {
        const char* key;
        double value, sigma;
        const char* unit;
        Tag tag;
    } rows[] = {{"/track/gravity_m_s2", 9.80665, 0, "m/s²", Tag::definition},
                {"/track/first_slope_deg", -25, 0.5, "°", Tag::memory},
                {"/air/temperature_c", 20, 3, "°C", Tag::memory},
                {"/scale/division_g", 0.1, 0, "g", Tag::memory},
                {"/model/journal", 0.1, 0.03, "", Tag::fit},
                {"/model/creep_per_rad", 10, 10 * std::log(3.0), "", Tag::fit},
                {"/model/kick_n_mm", 1.4, 1.4 / 3, "N mm", Tag::fit},
                {"/cars/0/model/align_deg", 0.4, 0.4 / 3, "°", Tag::fit},
                {"/cars/0/axles/rear_x_mm", 22, 0.3, "mm", Tag::memory},
                {"/cars/0/wheels/3/mass_g", 2.6, 0.1, "g", Tag::memory},
                {"/cars/0/wheels/0/hub_ring_mm/1", 2.25, 0.1125, "mm", Tag::memory},
                {"/cars/0/body/density_kg_m3", 392, 39.2, "kg/m³", Tag::published},
                {"/cars/0/drag/coefficient", 0.9, 0.18, "", Tag::published}};
    for (const auto& row : rows) {
        INFO(row.key);
        const Assumed* a = find_assumed(p, row.key);
        REQUIRE(a != nullptr);
        CHECK(std::get<double>(a->value) == Approx(row.value).epsilon(1e-9));
        CHECK(a->sigma == Approx(row.sigma).epsilon(1e-9));
        CHECK(a->unit == row.unit);
        CHECK(a->tag == row.tag);
    }
    for (const char* key :
         {"/units", "/track/quality", "/track/rail", "/cars/0/body/wood", "/cars/0/body/profile_mm",
          "/cars/0/axles/holes", "/cars/0/wheels/0/hub", "/cars/0/drag/class"}) {
        INFO(key);
        REQUIRE(find_assumed(p, key) != nullptr);
        CHECK(std::holds_alternative<std::string>(find_assumed(p, key)->value));
    }
    // Nothing is listed twice.
    std::vector<std::string> keys;
    for (const Assumed& a : p.assumed)
        keys.push_back(a.key);
    std::sort(keys.begin(), keys.end());
    CHECK(std::adjacent_find(keys.begin(), keys.end()) == keys.end());
}

TEST_CASE("a missing key and null mean the same") {
    const Json flat = demo_document().root.flatten();
    std::size_t tried = 0;
    for (const auto& [pointer, value] : flat.items()) {
        const Json::json_pointer place(pointer);
        const Document document = demo_document();
        if (!document.root[place.parent_pointer()].is_object()) continue;
        if (pointer == "/track/rail") continue;
        ++tried;
        const auto missing = problem_of([&] { read_project(with(pointer, "")); });
        const auto null = problem_of([&] { read_project(with(pointer, "null")); });
        INFO(pointer);
        REQUIRE(missing.has_value() == null.has_value());
        if (missing) {
            CHECK(std::string(missing->what()) == null->what());
        } else {
            const auto a = read_project(with(pointer, "")).assumed,
                       b = read_project(with(pointer, "null")).assumed;
            REQUIRE(a.size() == b.size());
            for (std::size_t i = 0; i < a.size(); ++i)
                REQUIRE(a[i].key == b[i].key);
        }
    }
    CHECK(tried > 150);
}

TEST_CASE("a rail that is null is said on purpose; one left out is a default") {
    const Project null = read_project(with("/track/rail", "null"));
    CHECK_FALSE(null.track.rail);
    CHECK(find_assumed(null, "/track/rail") == nullptr);
    CHECK(find_assumed(read_project(with("/track/rail", "")), "/track/rail") != nullptr);
}

TEST_CASE("a car's own model overrides the project's, name by name") {
    const Project plain = read_project(demo_document());
    const Model& swift = plain.cars[2].model;
    CHECK(swift[ModelName::journal].value == 0.08);
    CHECK(swift[ModelName::journal].sigma == 0.025);
    CHECK(plain.cars[0].model[ModelName::journal].value == 0.1);
    CHECK(swift[ModelName::rolling].value == 0.0015);
    CHECK(swift[ModelName::align_deg].value == 0.2); // jig
    CHECK(plain.cars[0].model[ModelName::align_deg].value == 0.4);

    // A value alone keeps the usual uncertainty relative to itself; a sigma alone keeps the value.
    const Project value = read_project(with("/model/rolling", R"({"value": 0.003})"));
    CHECK(value.cars[0].model[ModelName::rolling].sigma == Approx(0.001));
    CHECK(find_assumed(value, "/model/rolling/sigma") != nullptr);
    CHECK(find_assumed(value, "/model/rolling") == nullptr);
    const Project sigma = read_project(with("/model/rolling", R"({"sigma": 0.0001})"));
    CHECK(sigma.model[ModelName::rolling].value == 0.0015);
    CHECK(sigma.model[ModelName::rolling].sigma == 0.0001);
    // The project's word on alignment holds for all cars, whatever their holes.
    const Project align = read_project(with("/model/align_deg", R"({"value": 0.5, "sigma": 0.1})"));
    CHECK(align.cars[2].model[ModelName::align_deg].value == 0.5);
    CHECK(find_assumed(align, "/cars/2/model/align_deg") == nullptr);
}

TEST_CASE("track quality sets what joints and bumps do") {
    const struct {
        const char* quality;
        double need, kick;
    } rows[] = {{"smooth", 0.2, 0.9}, {"fair", 0.4, 1.4}, {"rough", 0.7, 2.0}};
    for (const auto& row : rows) {
        const Project p = read_project(with("/track/quality", "\"" + std::string(row.quality) + "\""));
        CHECK(p.model[ModelName::need_deg].value == row.need);
        CHECK(p.model[ModelName::kick_n_mm].value == row.kick);
    }
}

TEST_CASE("a ballast piece without a mass takes it from its size and material") {
    const Project p = read_project(with("/cars/0/ballast/0/mass_g", ""));
    // 13 x 24 x 7 mm of tungsten; 19.3 g/cm³ in the CRC Handbook, tables differ by the last digit.
    CHECK(p.cars[0].ballast[0].mass == Approx(13e-3 * 24e-3 * 7e-3 * 19300).epsilon(0.01));
    CHECK_FALSE(p.cars[0].ballast[0].mass_given);
    CHECK(find_assumed(p, "/cars/0/ballast/0/mass_g") != nullptr);
    CHECK(p.cars[0].ballast[1].mass_given);
}

TEST_CASE("what holds a weight weighs what the file states, else the table's typical mass, as assumed") {
    const std::string key = "/cars/0/ballast/0/held_g";
    CHECK(find_assumed(demo_project(), key) == nullptr); // nothing holds it yet
    const Document held = set_value(demo_document(), "/cars/0/ballast/0/held", "screw", "x").document;
    const Project typical = read_project(held);
    const Holding& screw = *find_holding("screw");
    const Assumed* assumed = find_assumed(typical, key);
    REQUIRE(assumed != nullptr);
    CHECK(std::get<double>(assumed->value) == Approx(screw.mass.value * 1e3));
    CHECK(assumed->sigma == Approx(screw.mass.sigma * 1e3));
    CHECK(assumed->unit == "g");
    CHECK(assumed->tag == screw.status);
    CHECK_FALSE(typical.cars[0].ballast[0].held_mass);
    const Project stated = read_project(set_value(held, key, 0.7, "x").document);
    CHECK(find_assumed(stated, key) == nullptr);
    CHECK(stated.cars[0].ballast[0].held_mass == Approx(0.7e-3));
    const auto in_figures = compute_figures(typical, 0).assumed;
    CHECK(std::any_of(in_figures.begin(), in_figures.end(), [&](const Assumed& a) { return a.key == key; }));
}

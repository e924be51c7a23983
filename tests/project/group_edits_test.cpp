#include "project/group_samples.hpp"
#include "project/helpers.hpp"

#include <rampwright/results/figures.hpp>

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>
#include <random>
#include <set>

using namespace rampwright;
using namespace rampwright::test;
using Catch::Contains;

namespace {

constexpr double mm = 1e-3;

CarPlan car_of(const Document& document, std::size_t car) {
    return read_project(document).cars.at(car);
}

Json ball(double x, double y, double z, const char* in = nullptr) {
    Json piece{{"piece", "ball"}, {"shape", "sphere"}, {"size_mm", {4}}, {"mass_g", 1}, {"at_mm", {x, y, z}}};
    if (in) piece["in"] = in;
    return piece;
}

/// Bittern with a pocket to the left, a ball in it, a ball on no line, and a turned bar.
Document lopsided() {
    Document d = demo_document();
    Json& car = d.root["cars"][0];
    car["body"]["cuts"].push_back(Json{
        {"name", "left pocket"}, {"kind", "pocket"}, {"from_mm", {100, 4, 8}}, {"to_mm", {110, 12, 17}}});
    car["ballast"].push_back(ball(105, 8.3, 10, "left pocket"));
    car["ballast"].push_back(ball(120, -5.25, 10));
    car["ballast"].push_back(Json{{"piece", "bar"},
                                  {"shape", "box"},
                                  {"size_mm", {10, 4, 4}},
                                  {"mass_g", 2},
                                  {"at_mm", {130, 6, 12}},
                                  {"turned_deg", 30}});
    return parse_document(to_text(d));
}

/// The demo with each car's first piece to the left.
Document off_the_line() {
    Document d = demo_document();
    for (std::size_t car = 0; car < 3; ++car)
        d = move_ballast(d, car, 0, car_of(d, car).ballast[0].at + Vec3(0, 1, 0) * mm).document;
    return d;
}

double moment_y(const CarPlan& plan) {
    double sum = 0;
    for (const BallastPlan& piece : plan.ballast)
        sum += piece.mass * piece.at.y();
    return sum;
}

double mass_of(const CarPlan& plan) {
    double sum = 0;
    for (const BallastPlan& piece : plan.ballast)
        sum += piece.mass;
    return sum;
}

} // namespace

TEST_CASE("every edit of a group tells what differs and leaves the old document alone", "[group]") {
    std::set<std::string> done;
    for (unsigned n = 0; n < 12; ++n)
        for (const Document& before : {demo_document(), lopsided(), off_the_line()})
            for (const EditSample& sample : group_samples(n)) {
                INFO(sample.what << " " << n);
                const std::string text = to_text(before);
                try {
                    const Edit edit = sample.apply(before);
                    CHECK(to_text(before) == text);
                    CHECK(edit.keys == difference(before, edit.document));
                    CHECK(edit.changed() == (to_text(edit.document) != text));
                    CHECK(parse_document(to_text(edit.document)) == edit.document);
                    if (edit.changed()) done.insert(sample.what);
                } catch (const Problem& problem) {
                    CHECK(!problem.wrong().empty());
                    CHECK(!problem.remedy().empty());
                }
            }
    // Each of them did something at least once.
    CHECK(done.size() == group_samples(0).size());
}

TEST_CASE("200 edits of every kind, groups too: undone to the first byte, done again to the last",
          "[group]") {
    for (const unsigned seed : {3u, 4u}) {
        std::mt19937 random(seed);
        std::vector<Document> history{demo_document()};
        std::vector<std::string> texts{to_text(history[0])};
        std::size_t groups = 0, refused = 0;
        while (history.size() <= 200) {
            const unsigned n = static_cast<unsigned>(random());
            const bool group = n % 2 == 0;
            const auto samples = group ? group_samples(n / 2) : edit_samples(n / 2);
            const EditSample& sample = samples[random() % samples.size()];
            try {
                Edit edit = sample.apply(history.back());
                REQUIRE(edit.keys == difference(history.back(), edit.document));
                if (!edit.changed() || read_project(edit.document).cars.size() > 12) continue;
                history.push_back(std::move(edit.document));
                texts.push_back(to_text(history.back()));
                groups += group;
            } catch (const Problem&) {
                REQUIRE(++refused < 20000);
            }
        }
        CHECK(groups >= 50);
        for (std::size_t i = history.size(); i-- > 0;)
            REQUIRE(to_text(history[i]) == texts[i]);
        CHECK(texts.front() == bytes_of(demo_path()));
        for (std::size_t i = 0; i < history.size(); ++i)
            REQUIRE(to_text(history[i]) == texts[i]);
    }
}

TEST_CASE("mirrored twice is as before, to the byte; mirrored once turns the moment about the line",
          "[group]") {
    const Document d = lopsided();
    const Group groups[] = {{{2}, {}}, {{3}, {}}, {{2, 3, 4}, {}}, {{}, {1}}, {{0, 1, 2, 3, 4}, {0, 1}}};
    for (const Group& group : groups) {
        const Edit once = mirror_group(d, 0, group);
        CHECK(once.changed());
        CHECK(to_text(mirror_group(once.document, 0, group).document) == to_text(d));
        const CarPlan plan = car_of(once.document, 0);
        CHECK(mass_of(plan) == Approx(mass_of(car_of(d, 0))).epsilon(1e-14));
    }
    const CarPlan all = car_of(mirror_group(d, 0, groups[4]).document, 0);
    CHECK(moment_y(all) == Approx(-moment_y(car_of(d, 0))).epsilon(1e-12));
    CHECK(all.ballast[4].turned == Approx(-car_of(d, 0).ballast[4].turned));
    // A piece in a pocket to one side takes the pocket along, and a pocket its piece.
    for (const Group& group : {Group{{2}, {}}, Group{{}, {1}}}) {
        const CarPlan plan = car_of(mirror_group(d, 0, group).document, 0);
        CHECK(plan.ballast[2].at.y() == Approx(-8.3 * mm));
        CHECK(plan.ballast[2].in == "left pocket");
        CHECK(std::max(plan.body.cuts[1].from.y(), plan.body.cuts[1].to.y()) == Approx(-4 * mm));
    }
}

TEST_CASE("a mirrored copy stands across the line, in its own cut, and the car balances left and right",
          "[group]") {
    const Document d = lopsided();
    const Edit copy = mirror_copy(d, 0, {{2, 3, 4}, {}});
    const CarPlan plan = car_of(copy.document, 0);
    REQUIRE(plan.ballast.size() == 8);
    REQUIRE(plan.body.cuts.size() == 3);
    CHECK(plan.ballast[5].in == plan.body.cuts[2].name);
    CHECK(plan.ballast[5].at.isApprox(Vec3(105, -8.3, 10) * mm));
    CHECK(moment_y(plan) == Approx(0).margin(1e-15));
    // There now: it is not made twice, and a piece mirrored goes into the image that is there.
    CHECK_THROWS_AS(mirror_copy(copy.document, 0, {{}, {0}}), Problem);
    const CarPlan across = car_of(mirror_group(copy.document, 0, {{2}, {}}).document, 0);
    CHECK(across.ballast[2].in == plan.body.cuts[2].name);
    CHECK(across.body.cuts[1].from == plan.body.cuts[1].from);
    // On the line there is nothing to copy; a shelf that is empty says so.
    CHECK_THROWS_AS(mirror_copy(demo_document(), 0, {{0}, {}}), Problem);
    const Document swift = move_ballast(demo_document(), 2, 0, Vec3(8, 1, 5) * mm).document;
    CHECK_THAT(problem_of([&] { mirror_copy(swift, 2, {{0}, {}}); })->wrong(), Contains("the only one"));
}

TEST_CASE("aligned things share the face, the middle or the line, and weigh what they weighed", "[group]") {
    const Document d = lopsided();
    const Group group{{2, 3, 4}, {}};
    const double mass = mass_of(car_of(d, 0));
    const auto aligned = [&](int axis, AlignTo to) {
        const CarPlan plan = car_of(align_group(d, 0, group, axis, to).document, 0);
        CHECK(mass_of(plan) == mass);
        // Nothing moves but along the axis.
        for (std::size_t i = 0; i < plan.ballast.size(); ++i) {
            Vec3 by = plan.ballast[i].at - car_of(d, 0).ballast[i].at;
            by[axis] = 0;
            CHECK(by.norm() < 1e-12);
        }
        return plan.ballast;
    };
    // By hand: balls of 4 mm about x = 105 and 120; the bar about 130 reaches (10 cos 30 + 4 sin 30)/2 along
    // x.
    const double bar = (10 * std::cos(std::numbers::pi / 6) + 4 * std::sin(std::numbers::pi / 6)) / 2;
    const auto rear = aligned(0, AlignTo::low);
    CHECK(rear[2].at.x() == Approx(105 * mm));
    CHECK(rear[3].at.x() == Approx(105 * mm));
    CHECK(rear[4].at.x() == Approx((103 + bar) * mm).margin(1e-9));
    const auto front = aligned(0, AlignTo::high);
    CHECK(front[2].at.x() == Approx((130 + bar - 2) * mm).margin(1e-9));
    const auto middle = aligned(2, AlignTo::middle);
    CHECK(middle[2].at.z() == Approx(11 * mm));
    CHECK(middle[4].at.z() == Approx(11 * mm));
    for (const std::size_t i : {2, 3, 4})
        CHECK(aligned(1, AlignTo::centre_line)[i].at.y() == Approx(0).margin(1e-12));
    // Aligned again changes nothing; one alone can only go to the line.
    const Edit once = align_group(d, 0, group, 0, AlignTo::low);
    CHECK_FALSE(align_group(once.document, 0, group, 0, AlignTo::low).changed());
    CHECK_THROWS_AS(align_group(d, 0, {{2}, {}}, 0, AlignTo::low), Problem);
    CHECK(align_group(d, 0, {{2}, {}}, 1, AlignTo::centre_line).changed());
}

TEST_CASE("spaced evenly the gaps are equal and the ends stay", "[group]") {
    const Document d = lopsided();
    const auto& ballast = car_of(space_group(d, 0, {{2, 3, 4}, {}}, 0).document, 0).ballast;
    const double bar = (10 * std::cos(std::numbers::pi / 6) + 4 * std::sin(std::numbers::pi / 6)) / 2 * mm;
    const double x2 = ballast[2].at.x(), x3 = ballast[3].at.x(), x4 = ballast[4].at.x();
    CHECK(x2 == Approx(105 * mm));
    CHECK(x4 == Approx(130 * mm));
    CHECK((x3 - 2 * mm) - (x2 + 2 * mm) == Approx((x4 - bar) - (x3 + 2 * mm)).margin(2e-9));
    CHECK_THROWS_AS(space_group(d, 0, {{2, 3}, {}}, 0), Problem);
    const Document locked = lock_group(d, 0, {3}, true).document;
    CHECK_THROWS_AS(space_group(locked, 0, {{2, 3, 4}, {}}, 0), Problem);
}

TEST_CASE("what is locked or drilled stays, whatever is done to its group", "[group]") {
    const Document d = lock_group(lopsided(), 0, {2}, true).document;
    const Json locked = d.root["cars"][0]["ballast"][2];
    const auto stays = [&](const Edit& edit) {
        CHECK(edit.changed());
        const Json& ballast = edit.document.root["cars"][0]["ballast"];
        CHECK(std::find(ballast.begin(), ballast.end(), locked) != ballast.end());
    };
    stays(move_group(d, 0, {{2, Vec3(1, 1, 1) * mm, ""}, {3, Vec3(1, 1, 1) * mm, ""}}, {}, Vec3::Zero()));
    stays(remove_group(d, 0, {{2, 3}, {}}));
    stays(align_group(d, 0, {{2, 3}, {}}, 0, AlignTo::low));
    stays(mirror_group(d, 0, {{2, 3}, {}}));
    CHECK_THROWS_AS(remove_group(d, 0, {{2}, {}}), Problem);
    CHECK_THROWS_AS(mirror_group(d, 0, {{2}, {}}), Problem);
    // Its pocket cannot be mirrored either: it is glued in there.
    CHECK_THROWS_AS(mirror_group(d, 0, {{}, {1}}), Problem);
    CHECK(car_of(lock_group(d, 0, {2, 3}, false).document, 0).ballast[2].fixed == false);

    Document drilled = lopsided();
    drilled.root["cars"][0]["done"] = {"drilled"};
    const Json cuts = drilled.root["cars"][0]["body"]["cuts"];
    CHECK_THROWS_AS(move_group(drilled, 0, {}, {0, 1}, Vec3(1, 0, 0) * mm), Problem);
    CHECK_THROWS_AS(remove_group(drilled, 0, {{}, {0}}), Problem);
    CHECK_THROWS_AS(mirror_group(drilled, 0, {{2}, {}}), Problem);
    CHECK(remove_group(drilled, 0, {{2}, {0}}).document.root["cars"][0]["body"]["cuts"] == cuts);
}

TEST_CASE("everything of a car pasted into its bare body gives the source's figures", "[group]") {
    for (const std::size_t car : {0, 1, 2}) {
        const Document d = demo_document();
        const CarPlan plan = car_of(d, car);
        Group pieces;
        for (std::size_t i = 0; i < plan.ballast.size(); ++i)
            pieces.pieces.push_back(i);
        const Json copied = read_pieces(copy_group(d, car, pieces).dump());
        Document bare = duplicate_car(d, car, "Dunlin").document;
        bare.root["cars"][3]["ballast"] = Json::array();
        bare.root["cars"][3]["body"]["cuts"] = Json::array();
        const Edit pasted = paste_group(bare, 3, copied, Vec3(5, 0, 0) * mm);
        const Project project = read_project(pasted.document);
        CHECK(project.cars[3].body.cuts.size() == plan.body.cuts.size()); // they came along
        const Figures source = compute_figures(project, car), copy = compute_figures(project, 3);
        CHECK(copy.mass == source.mass);
        CHECK(copy.front_load == source.front_load);
        CHECK(copy.centre == source.centre);
        CHECK(copy.body_mass == source.body_mass);
        CHECK(pasted.document.root["cars"][3]["ballast"] == d.root["cars"][car]["ballast"]);
    }
}

TEST_CASE("a pasted piece goes into the same hole, brings its own, or stands aside of its twin", "[group]") {
    const Document d = demo_document();
    const Json one = copy_group(d, 0, {{0}, {}});
    const Vec3 aside = Vec3(5, 0, 0) * mm;
    // Its own car: the pocket is there, its twin too.
    const Edit beside = paste_group(d, 0, one, aside);
    CHECK(car_of(beside.document, 0).body.cuts.size() == 1);
    CHECK(car_of(beside.document, 0).ballast[2].at.isApprox(car_of(d, 0).ballast[0].at + aside));
    CHECK(car_of(paste_group(beside.document, 0, one, aside).document, 0).ballast[3].at.x() ==
          Approx(car_of(d, 0).ballast[0].at.x() + 10 * mm));
    // Wagtail has a pocket of that name elsewhere: Bittern's comes along under another.
    const CarPlan other = car_of(paste_group(d, 1, one, aside).document, 1);
    REQUIRE(other.body.cuts.size() == 2);
    CHECK(other.body.cuts[1].name == "pocket 1");
    CHECK(other.ballast[2].in == "pocket 1");
    CHECK(other.ballast[2].at.isApprox(car_of(d, 0).ballast[0].at));
    // Taken out and put back is as before.
    const Json gone = copy_group(d, 0, {{1}, {}});
    const Document without = remove_group(d, 0, {{1}, {}}).document;
    CHECK(to_text(paste_group(without, 0, gone, aside).document) == to_text(d));
    // Chosen cuts come as new ones.
    const Edit pocket = paste_group(d, 0, copy_group(d, 0, {{}, {0}}), aside);
    CHECK(car_of(pocket.document, 0).body.cuts[1].from.isApprox(car_of(d, 0).body.cuts[0].from + aside));
    // The shelf has four of them; drilled wood takes no new pocket, but its own hole.
    Document full = d;
    for (int i = 0; i < 2; ++i)
        full = paste_group(full, 0, one, aside).document;
    CHECK_THROWS_AS(paste_group(full, 0, one, aside), Problem);
    Document drilled = d;
    for (const std::size_t car : {0, 1})
        drilled.root["cars"][car]["done"] = {"drilled"};
    CHECK_THROWS_AS(paste_group(drilled, 1, one, aside), Problem);
    CHECK(paste_group(drilled, 0, one, aside).changed());
}

TEST_CASE("a clipboard that holds no pieces is refused with a reason", "[group]") {
    const std::string good = copy_group(demo_document(), 0, {{0}, {}}).dump();
    CHECK_NOTHROW(read_pieces(good));
    const auto with = [&](const char* key, const Json& value) {
        Json changed = Json::parse(good);
        changed[key] = value;
        return changed.dump();
    };
    const std::string bad[] = {"",
                               "  \n",
                               "hello",
                               "{}",
                               "[1]",
                               "{\"format\": \"rampwright-project\", \"version\": 1}",
                               good.substr(0, good.size() / 2),
                               with("version", 2),
                               with("version", nullptr),
                               with("pieces", "x"),
                               with("pieces", Json::array()),
                               with("pieces", {1, 2}),
                               with("holders", Json::object()),
                               std::string(70, '['),
                               "\xff\xfe",
                               std::string(5u << 20, ' ') + good};
    for (const std::string& text : bad) {
        INFO(text.substr(0, 60));
        const auto problem = problem_of([&] { read_pieces(text); });
        REQUIRE(problem);
        CHECK_FALSE(problem->wrong().empty());
        CHECK_FALSE(problem->remedy().empty());
    }
    // Ours, but the rows do not read as pieces.
    const Json rows[] = {
        {{"piece", "x"}},
        {{"piece", "x"}, {"shape", "sphere"}, {"size_mm", {4}}, {"mass_g", 1}, {"at_mm", {0, 0}}},
        {{"piece", "x"}, {"shape", "sphere"}, {"size_mm", {4}}, {"mass_g", -1}, {"at_mm", {0, 0, 0}}},
        {{"piece", "x"}, {"shape", "putty"}, {"size_mm", Json::array()}, {"mass_g", 1}, {"in", "none"}}};
    for (const Json& row : rows) {
        INFO(row.dump());
        const Json pieces = read_pieces(with("pieces", Json::array({row})));
        CHECK_THROWS_AS(paste_group(demo_document(), 0, pieces, Vec3::Zero()), Problem);
    }
}

TEST_CASE("a car of another project comes in under a name of its own and weighs what it weighed", "[group]") {
    Document other = demo_document();
    other.root["model"] = Json{{"journal", {{"value", 0.2}, {"sigma", 0.05}}}};
    other.root["track"]["title"] = "another lane";
    const Document d = demo_document();
    const TakenIn taken = take_in_cars(d, other, {0, 2, 0});
    CHECK(taken.names == std::vector<std::string>{"Bittern 2", "Swift 2", "Bittern 3"});
    CHECK(taken.other_lane);
    CHECK_FALSE(taken.other_rules);
    CHECK(taken.edit.keys == std::vector<std::string>{"/cars"});
    CHECK(taken.edit.name == "Take in 3 cars");
    const Project project = read_project(taken.edit.document);
    const Project there = read_project(other);
    REQUIRE(project.cars.size() == 6);
    // Bittern has the journal friction of its project, Swift its own.
    CHECK(taken.inputs_kept == 2);
    CHECK(project.cars[3].model[ModelName::journal].value == 0.2);
    CHECK(project.cars[3].model[ModelName::journal].sigma == 0.05);
    CHECK(project.cars[4].model[ModelName::journal].value == 0.08);
    for (const std::size_t i : {0, 1}) {
        const Figures here = compute_figures(project, 3 + i), was = compute_figures(there, i == 0 ? 0 : 2);
        CHECK(here.mass == was.mass);
        CHECK(here.front_load == was.front_load);
    }
    // Every run of the other file stays there, and is told.
    const auto runs = [&](const char* id) {
        return std::count_if(there.runs.begin(), there.runs.end(),
                             [&](const Run& run) { return run.car == id; });
    };
    CHECK(taken.runs_left == static_cast<std::size_t>(2 * runs("bittern") + runs("swift")));
    CHECK(project.runs.size() == read_project(d).runs.size());
    CHECK_THROWS_AS(take_in_cars(d, other, {}), Problem);
    CHECK_THROWS_AS(take_in_cars(d, other, {7}), Problem);
}

TEST_CASE("an input that this project states does not overrule a car that comes from another", "[group]") {
    Document d = demo_document();
    d.root["model"] = Json{{"journal", {{"value", 0.3}, {"sigma", 0.05}}}};
    const TakenIn taken = take_in_cars(d, demo_document(), {0});
    const double was = read_project(demo_document()).cars[0].model[ModelName::journal].value;
    CHECK(was != 0.3);
    CHECK(read_project(taken.edit.document).cars[3].model[ModelName::journal].value == was);
    CHECK(taken.inputs_kept == 1);
    // Nothing is kept where both say the same.
    CHECK(take_in_cars(d, d, {0}).inputs_kept == 0);
}

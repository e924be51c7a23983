#include "project/helpers.hpp"
#include "support/demo.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/project/edits.hpp>
#include <rampwright/project/track_library.hpp>
#include <rampwright/study/draws.hpp>
#include <rampwright/study/first_order.hpp>
#include <rampwright/track/track.hpp>
#include <rampwright/track/vary.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace rampwright;

namespace {

double lane_share(const Figures& figures) {
    double sum = 0;
    for (const Share& share : figures.shares)
        if (share.key.starts_with("lane_")) sum += share.share;
    return sum;
}

bool has(const Figures& figures, std::string_view code) {
    return std::any_of(figures.findings.begin(), figures.findings.end(),
                       [code](const Finding& f) { return f.code == code; });
}

} // namespace

TEST_CASE("every lane of the library can be put in, and every car of the demo runs it") {
    REQUIRE(track_library().size() >= 5);
    for (const LibraryTrack& lane : track_library()) {
        CAPTURE(lane.name);
        CHECK(!lane.title.empty());
        CHECK(!lane.notes.empty());
        const Edit edit = set_track(demo_document(), lane.track);
        const Project project = read_project(edit.document);
        CHECK(project.track.title == lane.title);
        for (std::size_t car = 0; car < project.cars.size(); ++car) {
            const Figures figures = compute_figures(project, car);
            CHECK(figures.heat.finished);
            CHECK(*figures.heat.time > 1);
            CHECK(*figures.heat.time < 8);
            CHECK(std::abs(figures.budget_residual) < 1e-9);
        }
        // A lane's own file is a project that holds nothing else.
        CHECK(parse_document(to_text(track_file(lane.track))).root.at("track") == lane.track);
    }
    // The demo's own lane is among them.
    const Json demo = demo_document().root.at("track");
    const Json& hall = track_library().front().track;
    CHECK(demo.at("pieces") == hall.at("pieces"));
    CHECK(demo.at("finish_line_mm") == hall.at("finish_line_mm"));
}

TEST_CASE("a constant slope falls by its length times the sine") {
    for (const LibraryTrack& lane : track_library())
        if (lane.name == "constant-slope") {
            const Project project = read_project(set_track(demo_document(), lane.track).document);
            CHECK(find_drop(project.track) == Approx(5.9 * std::sin(8 * degree)).epsilon(1e-12));
        }
}

TEST_CASE("a lane can be made to fall and to go as far as one likes") {
    TrackPlan plan = demo_project().track;
    const double drop = find_drop(plan), way = plan.finish_line - plan.start_line;
    for (const double part : {0.7, 0.95, 1.3}) {
        TrackPlan other = plan;
        set_drop(other, part * drop);
        CHECK(find_drop(other) == Approx(part * drop).epsilon(1e-8));
        CHECK(other.finish_line - other.start_line == Approx(way));
        CHECK(Track(other).length() == Approx(Track(plan).length()).epsilon(1e-12));
        set_way(other, part * way);
        CHECK(other.finish_line - other.start_line == Approx(part * way).epsilon(1e-12));
        CHECK(find_drop(other) == Approx(part * drop).epsilon(1e-8));
    }
    TrackPlan slope;
    slope.first_slope = -10 * degree;
    slope.pieces = {Straight{5}};
    slope.finish_line = 4;
    set_way(slope, 6);
    CHECK(find_drop(slope) == Approx(4 * std::sin(10 * degree)).epsilon(1e-8));
}

TEST_CASE("what an unknown lane is worth is what a shorter and a lower lane run") {
    Document document = demo_document();
    document = set_value(document, "/track/known", "unknown", "x").document;
    document = set_value(document, "/track/drop_sigma_mm", 100, "x").document;
    document = set_value(document, "/track/way_sigma_mm", 500, "x").document;
    const Project project = read_project(document);
    const HeatCase heat_case = make_case(project, 0);
    const FirstOrder spread = propagate(project, heat_case);
    const auto worth = [&](std::string_view key) {
        for (const FirstOrder::Term& term : spread.terms)
            if (term.key == key) return term.per_sigma;
        return std::nan("");
    };
    // By hand through the file: a level run longer or shorter by half a metre, log-normal as lengths are.
    const double way = 10.8, log_sigma = std::sqrt(std::log1p(0.5 * 0.5 / (way * way)));
    const auto longer = [&](double by) {
        Document d = demo_document();
        d = set_value(d, "/track/pieces/2/length_mm", 9200 + by * 1e3, "x").document;
        d = set_value(d, "/track/finish_line_mm", 11100 + by * 1e3, "x").document;
        return *compute_figures(read_project(d), 0).heat.time;
    };
    const double by_hand = 0.5 * (longer(way * std::expm1(log_sigma)) - longer(way * std::expm1(-log_sigma)));
    CHECK(worth("lane_way") == Approx(by_hand).epsilon(1e-4));
    CHECK(worth("lane_drop") < -0.01); // a lower lane is slower

    // Draws agree with first order, and vary the lane alike for two cars: the gap hardly depends on it.
    const Draws draws =
        run_draws(project, {0, 2}, {.draws = 1500, .seed = 3, .threads = 0, .keep_going = {}});
    const auto sigma = [](const std::vector<double>& values) {
        double mean = 0, square = 0;
        for (const double v : values)
            mean += v / double(values.size());
        for (const double v : values)
            square += (v - mean) * (v - mean) / double(values.size() - 1);
        return std::sqrt(square);
    };
    CHECK(sigma(draws.cars[0].heat) == Approx(spread.sigma).epsilon(0.15));
    std::vector<double> gap;
    for (std::size_t n = 0; n < draws.cars[0].expected.size(); ++n)
        gap.push_back(draws.cars[0].expected[n] - draws.cars[1].expected[n]);
    CHECK(sigma(gap) < 0.3 * sigma(draws.cars[0].expected));
}

TEST_CASE("an unknown lane says what rests on it and what does not") {
    const Document known = demo_document();
    const Document unknown = set_value(known, "/track/known", "unknown", "x").document;
    const Project a = read_project(known), b = read_project(unknown);
    const Figures with = compute_figures(a, 1), without = compute_figures(b, 1);
    CHECK_FALSE(has(with, "lane-unknown"));
    REQUIRE(has(without, "lane-unknown"));
    CHECK(lane_share(with) == 0);
    CHECK(lane_share(without) > 0.5);
    CHECK(without.heat.sigma > 3 * with.heat.sigma);
    // The finding's own claims: these are the same to the last digit.
    CHECK(with.mass == without.mass);
    CHECK(with.balance_ahead_of_rear_axle == without.balance_ahead_of_rear_axle);
    CHECK(with.front_load == without.front_load);
    CHECK(with.scale->reads == without.scale->reads);
    CHECK(with.findings.size() + 1 == without.findings.size());
    // Usual sigmas are listed as taken.
    CHECK(std::any_of(b.assumed.begin(), b.assumed.end(),
                      [](const Assumed& x) { return x.key == "/track/drop_sigma_mm"; }));
    CHECK(b.track.drop_sigma == Approx(0.150));
    // Points that were measured are no guess.
    Document measured =
        set_track_points(known, {{0, 1.2}, {1, 0.7}, {2, 0.3}, {3, 0.1}, {5, 0}, {9, 0}}).document;
    CHECK_THROWS_AS(set_value(measured, "/track/known", "unknown", "x"), Problem);
}

TEST_CASE("edits of the lane drop what no longer holds") {
    Document document = demo_document();
    document.root["track"]["start_height_mm"] = 1200;
    const Edit removed = remove_track_piece(document, 2);
    const Json& track = removed.document.root["track"];
    CHECK_FALSE(track.contains("start_height_mm"));
    // A straight of 2823 and an arc of 1200 x 25 degrees (523.6) eased by 100: 3446.6 mm.
    CHECK(track["finish_line_mm"] == 3446);
    CHECK_NOTHROW(Track(read_project(removed.document).track));
    CHECK_THROWS_AS(remove_track_piece(document, 9), Problem);
    CHECK_THROWS_AS(add_track_piece(document, 9, Json{{"kind", "straight"}, {"length_mm", 100}}), Problem);
    const Document points =
        set_track_points(document, {{0, 1.2}, {1, 0.7}, {2, 0.3}, {3, 0.1}, {5, 0}, {9, 0}}).document;
    CHECK_FALSE(points.root["track"].contains("pieces"));
    CHECK_THROWS_AS(remove_track_piece(points, 0), Problem);
    CHECK_NOTHROW(Track(read_project(points).track));
}

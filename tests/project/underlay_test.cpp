#include "project/helpers.hpp"
#include "support/demo.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/project/edits.hpp>
#include <rampwright/project/pictures.hpp>

#include <catch2/catch.hpp>

#include <numbers>

using namespace rampwright;
using std::numbers::pi;

namespace {

/// Where a place of the picture lies on the drawing: `share` from its middle, in picture widths.
Vec2 place(const Underlay& u, Vec2 share) {
    if (u.mirrored) share.x() = -share.x();
    return u.at + u.width * Vec2(std::cos(u.turned) * share.x() - std::sin(u.turned) * share.y(),
                                 std::sin(u.turned) * share.x() + std::cos(u.turned) * share.y());
}

} // namespace

TEST_CASE("two places and their distance set the scale; the first stays", "[underlay]") {
    for (const bool level : {false, true})
        for (const bool mirrored : {false, true})
            for (const double turned : {0., 0.4, -2.5}) {
                const Underlay before{"sketch.png", Vec2(0.09, 0.02), 0.2, turned, 0.5, mirrored, false};
                for (const auto& [a, b] : {std::pair{Vec2(-0.3, 0.1), Vec2(0.4, -0.2)},
                                           {Vec2(0.2, 0.2), Vec2(-0.1, 0.25)},
                                           {Vec2(0, -0.2), Vec2(0, 0.3)}}) {
                    const Vec2 one = place(before, a), other = place(before, b);
                    const Underlay after = scaled_underlay(before, one, other, 0.11, level);
                    CHECK((place(after, a) - one).norm() < 1e-12);
                    const Vec2 way = place(after, b) - place(after, a);
                    CHECK(way.norm() == Approx(0.11).epsilon(1e-12));
                    if (level) CHECK(std::abs(way.y()) < 1e-12);
                    CHECK(std::abs(std::remainder(after.turned - before.turned, 2 * pi)) <= pi / 2 + 1e-12);
                    if (!level) CHECK(after.turned == before.turned);
                }
            }
    const Underlay any{"sketch.png", Vec2::Zero(), 0.2};
    CHECK_THROWS_AS(scaled_underlay(any, Vec2(0.1, 0), Vec2(0.1, 0), 0.1, true), Problem);
    CHECK_THROWS_AS(scaled_underlay(any, Vec2(0.1, 0), Vec2(0.2, 0), 0, true), Problem);
    CHECK_THROWS_AS(scaled_underlay(any, Vec2(0.1, 0), Vec2(0.2, 0), -1, true), Problem);
    CHECK_THROWS_AS(scaled_underlay(any, Vec2(0.1, 0), Vec2(0.1001, 0), 1000, true), Problem);
}

TEST_CASE("an underlay is written, read back, changed and taken away; nothing else changes", "[underlay]") {
    const Document before = demo_document();
    const Underlay underlay{
        "sketches/fin.png", Vec2(0.0891, 0.0162), 0.1812, 12.5 * pi / 180, 0.35, true, true};
    const Edit laid = set_underlay(before, 1, false, underlay, "Lay picture: fin.png");
    const auto read = read_project(laid.document).cars[1].underlays;
    REQUIRE(read[0]);
    CHECK_FALSE(read[1]);
    CHECK(read[0]->picture == underlay.picture);
    CHECK((read[0]->at - underlay.at).norm() < 1e-12);
    CHECK(read[0]->width == Approx(underlay.width));
    CHECK(read[0]->turned == Approx(underlay.turned));
    CHECK(read[0]->opacity == Approx(underlay.opacity));
    CHECK(read[0]->mirrored);
    CHECK(read[0]->hidden);
    for (const std::string& key : laid.keys)
        CHECK(key.rfind("/cars/1/underlay", 0) == 0);
    // An unknown key beside it stays.
    Document with_more = laid.document;
    with_more.root["cars"][1]["underlay"]["side"]["taken_on"] = "2031-02-01";
    const Edit moved =
        set_underlay(with_more, 1, false, {"sketches/fin.png", Vec2::Zero(), 0.2}, "Move picture");
    CHECK(moved.document.root["cars"][1]["underlay"]["side"]["taken_on"] == "2031-02-01");
    CHECK_FALSE(moved.document.root["cars"][1]["underlay"]["side"].contains("mirrored"));
    CHECK(remove_underlay(laid.document, 1, false).document == before);
    CHECK_FALSE(remove_underlay(before, 1, true).changed());
    // No figure knows of it.
    CHECK(with_figures(laid.document).root["cars"][1]["figures"] ==
          with_figures(before).root["cars"][1]["figures"]);
}

TEST_CASE("an underlay that makes no sense is refused with its place", "[underlay]") {
    const auto refused = [](const char* key, const Json& value) {
        Document document =
            set_underlay(demo_document(), 0, true, {"a.png", Vec2::Zero(), 0.1}, "Lay").document;
        document.root["cars"][0]["underlay"]["top"][key] = value;
        try {
            read_project(document);
        } catch (const Problem& problem) {
            return problem.where();
        }
        return std::string("read");
    };
    CHECK(refused("width_mm", 0) == "/cars/0/underlay/top/width_mm");
    CHECK(refused("width_mm", nullptr) == "/cars/0/underlay/top/width_mm");
    CHECK(refused("picture", "") == "/cars/0/underlay/top/picture");
    CHECK(refused("opacity_pct", 101) == "/cars/0/underlay/top/opacity_pct");
    CHECK(refused("hidden", "yes") == "/cars/0/underlay/top/hidden");
    CHECK(refused("at_mm", Json::array({1})) == "/cars/0/underlay/top/at_mm");
}

TEST_CASE("pictures are named from the project's folder in the file, and in full while it is open",
          "[underlay]") {
    const auto with = [](const std::string& picture) {
        return set_underlay(demo_document(), 0, false, {picture, Vec2::Zero(), 0.1}, "Lay").document;
    };
    const auto named = [](const Document& document) {
        return document.root["cars"][0]["underlay"]["side"]["picture"].get<std::string>();
    };
    CHECK(named(with_full_picture_paths(with("sketches/fin.png"), "/home/wren/cars")) ==
          "/home/wren/cars/sketches/fin.png");
    CHECK(named(with_full_picture_paths(with("../fin.png"), "/home/wren/cars")) == "/home/wren/fin.png");
    CHECK(named(with_full_picture_paths(with("/srv/fin.png"), "/home/wren/cars")) == "/srv/fin.png");
    CHECK(named(with_picture_paths_from(with("/home/wren/cars/a/fin.png"), "/home/wren/cars")) ==
          "a/fin.png");
    CHECK(named(with_picture_paths_from(with("/home/wren/fin.png"), "/home/wren/cars")) == "../fin.png");
    const Document original = with("Skizze für Möwe.png");
    CHECK(with_picture_paths_from(with_full_picture_paths(original, "/a/b"), "/a/b") == original);
    CHECK(with_full_picture_paths(demo_document(), "/a") == demo_document());
}

#include <rampwright/body/outline.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/materials/materials.hpp>
#include <rampwright/materials/starting_shapes.hpp>

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>
#include <string>

using namespace rampwright;

namespace {

std::string where_refused(const std::string& row) {
    try {
        read_woods(R"({"rows": [{"id": "oak", "name": "oak", "density_kg_m3": 700, "sigma_kg_m3": 70,
                                 "status": "memory", "source": "memory"}, )" +
                   row + "]}");
        return "taken";
    } catch (const Problem& problem) {
        return problem.where();
    }
}

template <class Rows>
void check_rows(const Rows& rows) {
    CHECK(rows.size() >= 8);
    for (const auto& row : rows) {
        INFO(row.id);
        CHECK(row.source.size() > 10);
        for (const std::string& code : row.cautions) {
            INFO(code);
            CHECK(find_caution(code) != nullptr);
        }
        // What says it comes from memory, and what says it is published, must not contradict its own words.
        if (row.status == Tag::published) CHECK(row.source.find("from memory") == std::string::npos);
    }
}

} // namespace

TEST_CASE("a row without its source, unit, spread or status is refused where it fails") {
    const auto row = [](const char* rest) {
        return std::string(R"({"id": "ash", "name": "ash", )") + rest + "}";
    };
    CHECK(where_refused(
              row(R"("density_kg_m3": 600, "sigma_kg_m3": 60, "status": "memory", "source": "memory")")) ==
          "taken");
    CHECK(where_refused(row(R"("density_kg_m3": 600, "sigma_kg_m3": 60, "status": "memory")")) ==
          "/rows/1/source");
    CHECK(
        where_refused(row(R"("density_kg_m3": 600, "sigma_kg_m3": 60, "status": "memory", "source": "")")) ==
        "/rows/1/source");
    CHECK(
        where_refused(row(R"("density": 600, "sigma_kg_m3": 60, "status": "memory", "source": "memory")")) ==
        "/rows/1/density");
    CHECK(where_refused(
              row(R"("density_g": 600, "sigma_kg_m3": 60, "status": "memory", "source": "memory")")) ==
          "/rows/1/density");
    CHECK(where_refused(row(R"("density_kg_m3": 600, "status": "memory", "source": "memory")")) ==
          "/rows/1/sigma");
    CHECK(
        where_refused(row(R"("density_kg_m3": 600, "sigma": 60, "status": "memory", "source": "memory")")) ==
        "/rows/1/sigma");
    CHECK(where_refused(
              row(R"("density_kg_m3": 600, "sigma_kg_m3": 0, "status": "memory", "source": "memory")")) ==
          "/rows/1/sigma");
    CHECK(where_refused(
              row(R"("density_kg_m3": -6, "sigma_kg_m3": 60, "status": "memory", "source": "memory")")) ==
          "/rows/1/density");
    CHECK(where_refused(
              row(R"("density_kg_m3": "6", "sigma_kg_m3": 60, "status": "memory", "source": "memory")")) ==
          "/rows/1/density_kg_m3");
    CHECK(where_refused(row(R"("density_kg_m3": 600, "sigma_kg_m3": 60, "source": "memory")")) ==
          "/rows/1/status");
    CHECK(where_refused(row(R"("density_kg_m3": 600, "sigma_kg_m3": 60, "status": "sure", "source": "x")")) ==
          "/rows/1/status");
    CHECK(where_refused(R"({"id": "oak", "name": "another oak", "density_kg_m3": 600, "sigma_kg_m3": 60,
                            "status": "memory", "source": "memory"})") == "/rows/1/id");
    CHECK(where_refused("7") == "/rows/1");
    CHECK(where_refused("") == "-");
    CHECK_THROWS_AS(read_woods("{}"), Problem);
    CHECK_THROWS_AS(read_woods("[]"), Problem);
    CHECK_THROWS_AS(read_household_pieces(R"({"rows": [{"id": "a", "name": "a", "mass_g": 1, "sigma_g": 1,
        "shape": "sphere", "size_mm": [6, 6], "status": "memory", "source": "memory"}]})"),
                    Problem);
    CHECK_THROWS_AS(read_cautions(R"({"rows": [{"code": "a", "text": "b", "status": "memory"}]})"), Problem);
}

TEST_CASE("the shipped tables are whole") {
    check_rows(woods());
    check_rows(materials());
    check_rows(household_pieces());
    check_rows(holdings());
    for (const char* code :
         {"lead", "tungsten-dust", "graphite", "solvent", "glue", "hot-metal", "saw", "drill"})
        CHECK(find_caution(code) != nullptr);
    for (const Caution& caution : cautions()) {
        INFO(caution.code);
        CHECK(caution.text.find("Local rules and the adult in charge decide.") != std::string::npos);
    }
    CHECK(find_material("lead")->cautions == std::vector<std::string>{"lead"});
    CHECK(find_wood("Eastern White Pine") == find_wood("eastern-white-pine"));
    CHECK(find_wood("balsa")->source.find("kg/m³") != std::string::npos); // embedded byte by byte
    CHECK(find_wood("mithril") == nullptr);
    for (const HouseholdPiece& piece : household_pieces())
        CHECK(piece.source.find("weigh yours") != std::string::npos);
}

TEST_CASE("wood densities are the published specific gravities at 12 % moisture") {
    // USDA Forest Service FIA, REF_SPECIES, column WOOD_SPGR_MC12VOL_DRYWT (seen; Miles and Smith 2009).
    struct Row {
        const char* id;
        double specific_gravity;
    };
    for (const Row& row : {Row{"eastern-white-pine", 0.35},
                           {"western-white-pine", 0.38},
                           {"sugar-pine", 0.36},
                           {"ponderosa-pine", 0.40},
                           {"basswood", 0.37},
                           {"yellow-poplar", 0.42},
                           {"black-walnut", 0.55},
                           {"sugar-maple", 0.63},
                           {"red-maple", 0.54},
                           {"silver-maple", 0.47},
                           {"bigleaf-maple", 0.48}}) {
        INFO(row.id);
        const Wood* wood = find_wood(row.id);
        REQUIRE(wood != nullptr);
        CHECK(wood->density.value == Approx(1000 * row.specific_gravity * 1.12).epsilon(1e-12));
        CHECK(wood->density.sigma == Approx(0.1 * wood->density.value).epsilon(0.01));
        CHECK(wood->status == Tag::published);
    }
    // Eastern white pine is 0.350 g/cm³ air dry in MatWeb (seen): within twice the spread between boards.
    CHECK(std::abs(find_wood("eastern-white-pine")->density.value - 350) <
          2 * find_wood("eastern-white-pine")->density.sigma);
}

TEST_CASE("metals have their handbook densities") {
    // CRC Handbook of Chemistry and Physics, 80th ed., as Debian's python3-periodictable 1.6.0 has it (seen).
    struct Row {
        const char* id;
        double density;
    };
    for (const Row& row : {Row{"tungsten", 19300},
                           {"lead", 11350},
                           {"iron", 7874},
                           {"nickel", 8902},
                           {"copper", 8960},
                           {"zinc", 7133},
                           {"tin", 7310},
                           {"bismuth", 9747},
                           {"aluminium", 2698.9},
                           {"titanium", 4540}}) {
        INFO(row.id);
        REQUIRE(find_material(row.id) != nullptr);
        CHECK(find_material(row.id)->density.value == Approx(row.density).epsilon(1e-12));
        CHECK(find_material(row.id)->status == Tag::published);
    }
}

TEST_CASE("household pieces of solid metal weigh what their size says") {
    // An annulus or a ball of the table's own steel or lead: the typical mass must agree within its spread.
    int checked = 0;
    for (const HouseholdPiece& piece : household_pieces()) {
        const bool lead = !piece.cautions.empty();
        const double density = find_material(lead ? "lead" : "steel")->density.value;
        double volume = 0;
        if (piece.shape == PieceShape::sphere)
            volume = std::numbers::pi / 6 * piece.size[0] * piece.size[0] * piece.size[0];
        else if (piece.hole > 0)
            volume = std::numbers::pi / 4 * (piece.size[0] * piece.size[0] - piece.hole * piece.hole) *
                     piece.size[1];
        else
            continue;
        INFO(piece.id);
        CHECK(piece.mass.value == Approx(density * volume).margin(piece.mass.sigma));
        ++checked;
    }
    CHECK(checked >= 10);
    // A piece without a hole takes less than the room it is given, filled with steel.
    for (const HouseholdPiece& piece : household_pieces()) {
        if (piece.shape != PieceShape::cylinder) continue;
        INFO(piece.id);
        CHECK(piece.mass.value <
              7850 * std::numbers::pi / 4 * piece.size[0] * piece.size[0] * piece.size[1] + piece.mass.sigma);
    }
}

TEST_CASE("starting shapes run round the wood once, within the block, and hold the axles of usual cars") {
    CHECK(starting_shapes().size() >= 5);
    for (const StartingShape& shape : starting_shapes()) {
        INFO(shape.id);
        for (const bool plan : {false, true}) {
            Outline outline;
            for (const PlanPoint& point : plan ? shape.plan : shape.profile)
                outline.push_back({point.at, point.smooth});
            CHECK_NOTHROW(check_outline(outline, "outline"));
            // A curve may bulge past its points, and how far depends on the scale: no wood grows on a block.
            for (const Eigen::Vector2d& block :
                 {Eigen::Vector2d(1, 1), Eigen::Vector2d(178, plan ? 44 : 32)}) {
                Outline scaled = outline;
                for (OutlinePoint& point : scaled)
                    point.at = point.at.cwiseProduct(block);
                for (const auto& at : flatten(scaled, 1e-4 * block.x())) {
                    CHECK(at.x() >= -1e-9);
                    CHECK(at.x() <= block.x() * (1 + 1e-9));
                    CHECK(at.y() >= block.y() * ((plan ? -0.5 : 0) - 1e-9));
                    CHECK(at.y() <= block.y() * ((plan ? 0.5 : 1) + 1e-9));
                }
            }
        }
        CHECK(shape.source.find("our own") == 0);
    }
    const auto refused = [](const std::string& profile) {
        try {
            read_starting_shapes(
                R"({"rows": [{"id": "x", "name": "x", "status": "memory", "source": "our own",
                                  "plan": [[0, -0.5], [1, -0.5], [1, 0.5]], "profile": )" +
                profile + "}]}");
            return std::string("taken");
        } catch (const Problem& problem) {
            return problem.where();
        }
    };
    CHECK(refused("[[0, 0], [1, 0], [1, 1]]") == "taken");
    CHECK(refused(R"([[0, 0], [1, 0, "smooth"], [1, 1]])") == "taken");
    for (const char* bad : {"[[0, 0], [1, 0]]", "[[0, 0], [1, 0], [1, 1.1]]", "[[0, 0], [1, 0], 1]",
                            R"([[0, 0], [1, 0], [1, 1, "round"]])", "7"})
        CHECK(refused(bad) == "/rows/0/profile");
}

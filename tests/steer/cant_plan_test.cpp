#include "support/demo.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/project/edits.hpp>
#include <rampwright/steer/cant_plan.hpp>

#include <catch2/catch.hpp>

#include <cmath>

using namespace rampwright;

namespace {

/// The inner face of a canted wheel as points in the y-z plane, turned about the middle of the wheel by plain
/// rotation: an independent way to the clearances.
struct Face {
    double y0, z0, half_width, cant, side; // side +1: left
    double y_at(double along) const {      // along the face, from the axle, up positive
        return y0 - side * half_width * std::cos(cant) - side * along * std::sin(cant);
    }
    double z_at(double along) const { return z0 - half_width * std::sin(cant) + along * std::cos(cant); }
};

} // namespace

TEST_CASE("cant: gaps agree with a wheel turned point by point") {
    Document document = demo_document();
    for (const double cant : {-3.0, -1.0, 0.0, 2.0, 4.0}) {
        Document now = document;
        for (const Corner corner : all_corners)
            now = set_value(now, "/cars/0/wheels/" + std::to_string(int(corner)) + "/cant_deg", cant, "Cant")
                      .document;
        const Project project = read_project(now);
        const CarModel model = build_car(project, 0);
        const CarOnWheels wheels = on_wheels(model);
        const auto rows = plan_cant(project, 0, model);
        REQUIRE(rows.size() == 4);
        for (const CantRow& row : rows) {
            const Wheel& wheel = wheels.wheels[std::size_t(row.corner)];
            const double side = is_left(row.corner) ? 1 : -1;
            const Face face{wheel.centre.y(), wheel.centre.z(), 0.5 * wheel.width, wheel.cant, side};
            double rail = 1;
            const double half_rail = 0.5 * project.track.rail->width;
            for (int i = -1000; i <= 1000; ++i) {
                const double along = wheel.radius * i / 1000;
                if (face.z_at(along) <= project.track.rail->height)
                    rail = std::min(rail, side * face.y_at(along) - half_rail);
            }
            REQUIRE(row.rail_gap);
            // The plan takes the face as a plane through the wheel's inner middle: second order in cant.
            CHECK(*row.rail_gap == Approx(rail).margin(0.1 * millimetre));
            CHECK(row.edge_lift == Approx(wheel.width * std::sin(std::abs(cant) * degree)).margin(1e-12));
            CHECK(row.bears_on_head.has_value() == (cant != 0));
            if (cant != 0) CHECK(*row.bears_on_head == (cant > 0));
        }
    }
}

TEST_CASE("cant: more of it closes the gap to the wood above the axle") {
    const Document document = demo_document();
    double last = 1;
    for (const double cant : {0.0, 1.0, 2.0, 3.0, 5.0}) {
        const Project project =
            read_project(set_value(document, "/cars/0/wheels/0/cant_deg", cant, "Cant").document);
        const auto rows = plan_cant(project, 0, build_car(project, 0));
        CHECK(rows.at(0).body_gap < last);
        last = rows.at(0).body_gap;
        // A bend turned straight up makes the same cant: closed form of the bent axle.
        CHECK(rows.at(0).bent.bend == Approx(cant * degree).margin(1e-9));
    }
}

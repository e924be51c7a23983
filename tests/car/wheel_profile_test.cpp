#include <rampwright/car/wheel_profile.hpp>

#include <catch2/catch.hpp>

#include <numbers>

using namespace rampwright;

TEST_CASE("a wheel of one ring has the moments of an annulus", "[car][wheel]") {
    // Annulus about its axis: m (r1² + r2²) / 2; 2.6 g between 1.2 and 15 mm: 2.94372e-7 kg m² (closed form).
    // About a diameter of a tube of length w: m (3 (r1² + r2²) + w²) / 12 (from memory, any table of solids).
    WheelProfile profile;
    profile.outer_diameter = 0.030;
    profile.tread_width = profile.web_thickness = profile.hub_width = 0.008;
    profile.tread_thickness = 0.002;
    profile.hub_diameter = 0.008;
    profile.bore_diameter = 0.0024;
    const MassProperties wheel = revolve(profile, 0.0026);
    CHECK(wheel.inertia(1, 1) == Approx(2.94372e-7).epsilon(1e-6));
    const double sum = 0.0012 * 0.0012 + 0.015 * 0.015;
    CHECK(wheel.inertia(0, 0) == Approx(0.0026 * (3 * sum + 0.008 * 0.008) / 12).epsilon(1e-12));
    CHECK(wheel.inertia(2, 2) == Approx(wheel.inertia(0, 0)).epsilon(1e-12));
    CHECK(volume(profile) ==
          Approx(std::numbers::pi * (0.015 * 0.015 - 0.0012 * 0.0012) * 0.008).epsilon(1e-12));
}

TEST_CASE("disk, annulus and rim add up as a published wheel does", "[car][wheel]") {
    // OpenStax University Physics 1, section 10.7, the car drive train (seen): a wheel of a 15 kg disk of
    // radius 0.18 m, a 2 kg annulus from 0.18 to 0.32 m and a 10 kg rim at 0.33 m; two of them, an axle of 14
    // kg and radius 0.02 m, a shaft of 30 kg and 0.032 m: 2.95176 kg m² in all (its printed angular
    // acceleration, 190 N m / I = 64.4 rad/s², agrees; the printed 2.94 does not). Here the rim is a ring as
    // thin as can be.
    const double thin = 1e-7;
    WheelProfile profile;
    profile.outer_diameter = 0.66 + thin;
    profile.tread_thickness = thin;
    profile.hub_diameter = 0.36;
    profile.bore_diameter = 0;
    // Widths that give the three rings the published masses at one density; the web reaches out to the rim
    // here, so the annulus from 0.18 to 0.32 m is a wheel of its own.
    const auto ring = [](double inner, double outer, double mass) {
        WheelProfile p;
        p.outer_diameter = 2 * outer;
        p.bore_diameter = 2 * inner;
        p.tread_width = p.web_thickness = p.hub_width = 0.01;
        p.hub_diameter = inner + outer;
        p.tread_thickness = (outer - inner) / 4;
        return revolve(p, mass).inertia(1, 1);
    };
    const double wheel = ring(0, 0.18, 15) + ring(0.18, 0.32, 2) + ring(0.33, 0.33 + thin, 10);
    const double all = 2 * wheel + ring(0, 0.02, 14) + ring(0, 0.032, 30);
    CHECK(all == Approx(2.95176).epsilon(2e-6));
    CHECK(190 / all == Approx(64.37).epsilon(1e-4));
}

TEST_CASE("the usual profile is a wheel", "[car][wheel]") {
    for (const double outer : {0.010, 0.0302, 0.060, 0.2})
        for (const double width : {0.002, 0.008, 0.02})
            for (const double share : {0.05, 0.085, 0.3, 0.7, 0.95}) {
                const WheelProfile p = usual_profile(outer, width, share * outer);
                CAPTURE(outer, width, share);
                CHECK(p.bore_diameter < p.hub_diameter);
                CHECK(p.hub_diameter < p.outer_diameter - 2 * p.tread_thickness);
                const double factor = revolve(p, 1).inertia(1, 1) / (outer * outer / 4);
                CHECK(factor > 0.4);
                CHECK(factor < 1);
            }
    // A moulded stock wheel weighs up to 2.7 g (common practice, no source), of a plastic near 1.05 g/cm³
    // (from memory); 0.55 m R² is usual for it (common practice, no source).
    const WheelProfile stock = usual_profile(0.0302, 0.008, 0.0026);
    CHECK(volume(stock) * 1050 == Approx(0.0022).epsilon(0.25));
    CHECK(revolve(stock, 1).inertia(1, 1) / (0.0151 * 0.0151) == Approx(0.57).margin(0.04));
}

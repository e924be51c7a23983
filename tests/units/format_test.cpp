#include <rampwright/core/constants.hpp>
#include <rampwright/units/decimal.hpp>
#include <rampwright/units/entry.hpp>
#include <rampwright/units/format.hpp>
#include <rampwright/units/key_unit.hpp>

#include <catch2/catch.hpp>

#include <clocale>
#include <cmath>
#include <locale>
#include <random>
#include <sstream>
#include <string>

using namespace rampwright;

namespace {

constexpr auto metric = UnitSystem::metric;
constexpr auto inches = UnitSystem::inch_ounce;
using enum Quantity;

} // namespace

TEST_CASE("decimals round as on paper") {
    CHECK(to_fixed(2.675, 2) ==
          "2.68"); // the double lies below: 2.67499999999999982236431605997495353221893310546875
    CHECK(to_fixed(-2.675, 2) == "-2.68");
    CHECK(to_fixed(0.5, 0) == "1");
    CHECK(to_fixed(1.5, 0) == "2");
    CHECK(to_fixed(2.5, 0) == "3");
    CHECK(to_fixed(0.05, 1) == "0.1");
    CHECK(to_fixed(0.04999, 1) == "0.0");
    CHECK(to_fixed(-0.04, 1) == "0.0");
    CHECK(to_fixed(-0.0, 1) == "0.0");
    CHECK(to_fixed(999.96, 1) == "1000.0");
    CHECK(to_fixed(0.0096, 2) == "0.01");
    CHECK(to_fixed(1234.5, -2) == "1200");
    CHECK(to_fixed(1250, -2) == "1300");
    CHECK(to_fixed(49, -2) == "0");
    CHECK(to_fixed(50, -2) == "100");
    CHECK(to_fixed(1e20, 1) == "100000000000000000000.0");
    CHECK(to_fixed(0.1 + 0.2, 3) == "0.300");
    CHECK(to_fixed(1e-12, 3) == "0.000");
}

TEST_CASE("values are written in the person's units") {
    CHECK(format(0.111, length, metric) == "111.0 mm");
    CHECK(format(0.111, length, inches) == "4.370 in");
    CHECK(format(5 * ounce, mass, metric) == "141.7 g");
    CHECK(format(5 * ounce, mass, inches) == "5.000 oz");
    CHECK(format(-3 * degree, angle, metric) == "−3.00°");
    CHECK(format(-0.00001, length, metric) == "0.0 mm");
    CHECK(format(293.15, temperature, metric) == "20.0 °C");
    CHECK(format(293.15, temperature, inches) == "68.0 °F");
    CHECK(format(0.4, percent, metric) == "40.0 %");
    CHECK(format(101325, pressure, inches) == "29.92 inHg");
    CHECK(format(std::nan(""), length, metric) == "–");
    CHECK(format(INFINITY, length, metric) == "–");

    FormatOptions options;
    options.decimals = 4;
    CHECK(format(2.501364, Quantity::time, metric, options) == "2.5014 s");
    options.trim = true;
    CHECK(format(2.5, Quantity::time, metric, options) == "2.5 s");
    CHECK(format(3, Quantity::time, metric, options) == "3 s");
    options.unit = find_unit("ms");
    CHECK(format(0.0123, Quantity::time, metric, options) == "12.3 ms");
    options.with_unit = false;
    options.ascii = true;
    CHECK(format(-0.0123, Quantity::time, metric, options) == "-12.3");

    FormatOptions significant;
    significant.significant = 3;
    CHECK(format(0.123456, length, metric, significant) == "123 mm");
    CHECK(format(0.000123456, length, metric, significant) == "0.123 mm");
    CHECK(format(0.99996, length, metric, significant) == "1000 mm");
    CHECK(format(0.0, length, metric, significant) == "0.00 mm");
}

TEST_CASE("inches are written as fractions where they are") {
    CHECK(format_entry(3.0 / 8 * inch, length, inches) == "3/8 in");
    CHECK(format_entry(9.525e-3, length, inches) == "3/8 in");
    CHECK(format_entry(4.375 * inch, length, inches) == "4 3/8 in");
    CHECK(format_entry(-4.375 * inch, length, inches) == "−4 3/8 in");
    CHECK(format_entry(4 * inch, length, inches) == "4 in");
    CHECK(format_entry(0, length, inches) == "0 in");
    CHECK(format_entry(1.0 / 64 * inch, length, inches) == "1/64 in");
    CHECK(format_entry(1.0 / 128 * inch, length, inches) == "0.007813 in");
    CHECK(format_entry(0.1 * inch, length, inches) == "0.1 in");
    CHECK(format_entry(9.525e-3, length, metric) == "9.525 mm");
    CHECK(format_entry(0.012, mass, metric) == "12 g");
    CHECK(format_entry(0.0015, plain, metric) == "0.0015");
    CHECK(format_entry(0.5 * ounce, mass, inches) == "0.5 oz");
}

TEST_CASE("what was typed as a 64th reads back as typed, through the file's millimetres too") {
    const Unit& mm = *find_unit("mm");
    for (int count = -640; count <= 640; ++count) {
        const double si = count / 64.0 * inch;
        const std::string shown = format_entry(si, length, inches);
        CAPTURE(shown);
        const double typed = parse_entry(shown, length, inches);
        CHECK(typed == Approx(si).epsilon(1e-15));
        const double from_file = to_si(from_si(typed, mm), mm);
        CHECK(format_entry(from_file, length, inches) == shown);
        CHECK(from_file == typed);
    }
}

TEST_CASE("what an entry field shows is read back within its last decimal, in every unit") {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> exponent(-2, 3), sign(-1, 1);
    for (int i = 0; i < 2000; ++i) {
        for (const Quantity quantity :
             {plain, percent, length, area, volume, mass, inertia, density, angle, Quantity::time, speed,
              acceleration, force, torque, energy, pressure}) {
            for (const UnitSystem system : {metric, inches}) {
                const double number = std::copysign(std::pow(10, exponent(random)), sign(random));
                const double si = to_si(number, default_unit(quantity, system));
                const std::string shown = format_entry(si, quantity, system);
                CAPTURE(shown);
                // Four significant digits at the least: half a unit of the fourth is 5e-4 of the value.
                CHECK(parse_entry(shown, quantity, system) == Approx(si).epsilon(5.1e-4));
            }
        }
    }
}

TEST_CASE("switching units a hundred times changes nothing") {
    std::mt19937 random(8);
    std::uniform_int_distribution<int> micrometres(1, 400000);
    for (int i = 0; i < 200; ++i) {
        const double number = micrometres(random) / 1000.0; // as a file says it, in mm
        const double si = to_si(number, *find_unit("mm"));
        const std::string first_metric = format_entry(si, length, metric);
        const std::string first_inches = format_entry(si, length, inches);
        for (int turn = 0; turn < 100; ++turn) {
            REQUIRE(format_entry(si, length, inches) == first_inches);
            REQUIRE(format_entry(si, length, metric) == first_metric);
        }
        CHECK(from_si(si, *find_unit("mm")) == number);
    }
}

TEST_CASE("a number of a file survives a hundred loads and saves") {
    std::mt19937 random(9);
    std::uniform_int_distribution<int> thousandths(-400000, 400000);
    for (const char* symbol : {"mm", "g", "°", "kg/m³", "g mm²", "°C", "hPa", "%", "s"}) {
        const Unit& unit = *find_unit(symbol);
        for (int i = 0; i < 2000; ++i) {
            const double number = thousandths(random) / 1000.0;
            double again = number;
            for (int turn = 0; turn < 100; ++turn)
                again = from_si(to_si(again, unit), unit);
            // An offset costs digits: a file's 0.001 °C is known to 1e-13 in kelvin.
            if (unit.offset != 0)
                CHECK(again == Approx(number).margin(1e-12));
            else
                CHECK(again == number);
        }
    }
}

TEST_CASE("value and uncertainty are rounded by the GUM's rule") {
    const auto shown = [](double value, double sigma) {
        return format_with_sigma(value, sigma, plain, metric);
    };
    // JCGM 100:2008, 7.2.6 (seen as quoted in a public test suite): 10.05762 with 0.027 becomes 10.058;
    // 10.47 may be rounded up to 11; 28.05 should be rounded down to 28.
    CHECK(shown(10.05762, 0.027) == "10.058 ± 0.027");
    CHECK(shown(100, 10.47) == "100 ± 11");
    CHECK(shown(100, 28.05) == "100 ± 28");
    // Ours: carries, tens, and what is no uncertainty.
    CHECK(shown(2.501364, 0.0996) == "2.50 ± 0.10");
    CHECK(shown(2.501364, 0.0123) == "2.501 ± 0.013");
    CHECK(shown(1234, 270) == "1230 ± 270");
    CHECK(shown(1234, 274) == "1230 ± 280");
    CHECK(shown(-0.001, 0.27) == "0.00 ± 0.27");
    CHECK(shown(-1, 0.27) == "−1.00 ± 0.27");
    CHECK(shown(1.5, 0) == "1.500");
    CHECK(shown(1.5, std::nan("")) == "1.500");
    CHECK(format_with_sigma(2.5014, 0.0121, Quantity::time, metric) == "2.501 ± 0.012 s");
    CHECK(format_with_sigma(293.15, 0.5, temperature, inches) == "68.00 ± 0.90 °F");
    CHECK(format_with_sigma(0.022, 0.0003, length, metric) == "22.00 ± 0.30 mm");
    FormatOptions ascii;
    ascii.ascii = true;
    CHECK(format_with_sigma(-0.022, 0.0003, length, metric, ascii) == "-22.00 +- 0.30 mm");
}

TEST_CASE("a locale with a decimal comma changes neither what is read nor what is written") {
    struct Comma : std::numpunct<char> {
        char do_decimal_point() const override { return ','; }
        char do_thousands_sep() const override { return '.'; }
        std::string do_grouping() const override { return "\3"; }
    };
    const std::locale before = std::locale::global(std::locale(std::locale::classic(), new Comma));
    const std::string c_before = std::setlocale(LC_ALL, nullptr);
    for (const char* name : {"de_DE.UTF-8", "fr_FR.UTF-8"}) // for C's functions too, where one is installed
        if (std::setlocale(LC_ALL, name)) break;
    std::ostringstream stream;
    stream << 1234.5;
    CHECK(stream.str() == "1.234,5"); // the locale is in force
    CHECK(format(1.2345, length, metric) == "1234.5 mm");
    CHECK(parse_entry("12.5", length, metric) == 0.0125);
    CHECK(parse_entry("12,5", length, metric) == 0.0125);
    std::setlocale(LC_ALL, c_before.c_str());
    std::locale::global(before);
}

TEST_CASE("a file's key says its unit") {
    const auto symbol = [](const char* key) {
        return find_key_unit(key) ? find_key_unit(key)->symbol : "none";
    };
    CHECK(symbol("length_mm") == "mm");
    CHECK(symbol("mass_each_g") == "g");
    CHECK(symbol("cant_deg") == "°");
    CHECK(symbol("density_kg_m3") == "kg/m³");
    CHECK(symbol("spin_inertia_g_mm2") == "g mm²");
    CHECK(symbol("frontal_area_mm2") == "mm²");
    CHECK(symbol("temperature_c") == "°C");
    CHECK(symbol("pressure_hpa") == "hPa");
    CHECK(symbol("humidity_pct") == "%");
    CHECK(symbol("run_scatter_s") == "s");
    CHECK(symbol("finish_speed_m_s") == "m/s");
    CHECK(symbol("gravity_m_s2") == "m/s²");
    CHECK(symbol("kick_n_mm") == "N mm");
    CHECK(symbol("mean_gap_ms") == "ms");
    CHECK(symbol("creep_per_rad") == "none");
    CHECK(symbol("hold_width") == "none");
    CHECK(symbol("wheels") == "none");
    CHECK(symbol("_mm") == "none");
    CHECK(to_si(1013.25, *find_key_unit("pressure_hpa")) == 101325);
    CHECK(to_si(20, *find_key_unit("temperature_c")) == 293.15);
    CHECK(to_si(40, *find_key_unit("humidity_pct")) == 0.4);
    CHECK(key_ending(*find_unit("g mm²")) == "_g_mm2");
    CHECK(key_ending(*find_unit("psi")).empty());
}

TEST_CASE("unit factors are the defined ones") {
    // Debian's units 2.22 definitions.units (seen): grain lb/7000 = 64.79891 mg, yard 0.9144 m, atm 101325
    // Pa; mmHg 133.322387415 Pa (its conventional definition, from memory).
    CHECK(to_si(1, *find_unit("gr")) == Approx(64.79891e-6).epsilon(1e-15));
    CHECK(to_si(1, *find_unit("yd")) == Approx(0.9144).epsilon(1e-15));
    CHECK(to_si(1, *find_unit("mph")) * 3600 == Approx(1609.344).epsilon(1e-15));
    CHECK(to_si(1, *find_unit("atm")) == 101325);
    CHECK(to_si(1, *find_unit("mmHg")) == Approx(133.322387415).epsilon(1e-12));
    CHECK(to_si(42, *find_unit("ft")) == Approx(12.8016).epsilon(1e-15));
    CHECK(to_si(0.01, *find_unit("oz")) == Approx(0.28349523125e-3).epsilon(1e-15));
    for (const UnitSystem system : {metric, inches})
        CHECK(*find_unit_system(to_string(system)) == system);
    CHECK_FALSE(find_unit_system("imperial"));
}

#include <rampwright/core/constants.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/templates/templates.hpp>
#include <rampwright/units/decimal.hpp>

namespace rampwright {

namespace {

constexpr std::string_view end_of_line = "\r\n";

/// RFC 4180: in quotes where it holds a comma, a quote or a line break; quotes are doubled.
std::string field(std::string_view text) {
    if (text.find_first_of(",\"\r\n") == std::string_view::npos) return std::string(text);
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"') out += '"';
        out += c;
    }
    return out + '"';
}

/// Grams to a thousandth, ounces to a ten-thousandth: a little finer than a scale of either kind shows.
void add_row(std::string& out, std::string_view name, double mass, double running) {
    out += field(name);
    for (const double kg : {mass, running}) {
        out += ',' + to_fixed(kg / gram, 3);
        out += ',' + to_fixed(kg / ounce, 4);
    }
    out += end_of_line;
}

} // namespace

std::string weight_schedule(const CarModel& car) {
    std::string out = "piece,grams,ounces,running_total_g,running_total_oz";
    out += end_of_line;
    double running = 0;
    for (const Part& part : car.parts) {
        running += part.properties.mass;
        add_row(out, part.name, part.properties.mass, running);
    }
    const double whole = total(car).mass;
    add_row(out, Core::tr("whole car"), whole, whole);
    return out;
}

} // namespace rampwright

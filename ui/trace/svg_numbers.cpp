#include "trace/svg_numbers.hpp"

#include <rampwright/body/path_data.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <array>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

namespace rampwright::ui {
namespace {

using Eigen::Affine2d;
using Eigen::Vector2d;

constexpr std::string_view spaces = " \t\n\r\f";

[[noreturn]] void refuse(std::size_t at, const std::string& wrong) {
    throw Problem(Exit::not_ours, "character " + std::to_string(at + 1), wrong,
                  Core::tr("save the drawing again as plain SVG"));
}

Affine2d transform_of(std::string_view name, const std::vector<double>& v, std::size_t at) {
    const std::size_t n = v.size();
    const auto radians = [](double degrees) {
        return std::remainder(degrees, 360.) * std::numbers::pi / 180;
    };
    Affine2d by = Affine2d::Identity();
    if (name == "matrix" && n == 6) {
        by.matrix() << v[0], v[2], v[4], v[1], v[3], v[5], 0, 0, 1;
    } else if (name == "translate" && (n == 1 || n == 2)) {
        by.translate(Vector2d(v[0], n == 2 ? v[1] : 0));
    } else if (name == "scale" && (n == 1 || n == 2)) {
        by.scale(Vector2d(v[0], v[n - 1]));
    } else if (name == "rotate" && (n == 1 || n == 3)) {
        const Vector2d about(n == 3 ? v[1] : 0, n == 3 ? v[2] : 0);
        by.translate(about);
        by.rotate(radians(v[0]));
        by.translate(-about);
    } else if (name == "skewX" && n == 1) {
        by.matrix()(0, 1) = std::tan(radians(v[0]));
    } else if (name == "skewY" && n == 1) {
        by.matrix()(1, 0) = std::tan(radians(v[0]));
    } else {
        refuse(at, Core::tr("a transform that is none, or has another count of numbers"));
    }
    return by;
}

} // namespace

SvgLength read_svg_length(std::string_view text) {
    struct Unit {
        std::string_view name;
        double user_units;
        SvgLength::Kind kind;
    };
    using Kind = SvgLength::Kind;
    static constexpr std::array<Unit, 8> units{{{"mm", 96 / 25.4, Kind::real},
                                                {"cm", 960 / 25.4, Kind::real},
                                                {"in", 96, Kind::real},
                                                {"pt", 96. / 72, Kind::real},
                                                {"pc", 16, Kind::real},
                                                {"px", 1, Kind::user},
                                                {"%", 1, Kind::share},
                                                {"", 1, Kind::user}}};
    const std::size_t last = text.find_last_not_of(spaces);
    text = text.substr(0, last == std::string_view::npos ? 0 : last + 1);
    for (const Unit& unit : units) {
        if (!text.ends_with(unit.name)) continue;
        std::vector<double> number;
        try {
            number = read_number_list(text.substr(0, text.size() - unit.name.size()));
        } catch (const Problem&) {
            // Said below, with what a length is.
        }
        if (number.size() != 1) refuse(0, Core::tr("a length is no number with a unit that is known"));
        return {number[0] * unit.user_units, unit.kind};
    }
    return {};
}

Affine2d read_svg_transform(std::string_view text) {
    Affine2d by = Affine2d::Identity();
    const std::string separators = std::string(spaces) + ",";
    for (std::size_t at = text.find_first_not_of(separators); at != std::string_view::npos;
         at = text.find_first_not_of(separators, at)) {
        const std::size_t open = text.find('(', at), close = text.find(')', at);
        if (open == std::string_view::npos || close == std::string_view::npos || close < open)
            refuse(at, Core::tr("a transform without its brackets"));
        std::string_view name = text.substr(at, open - at);
        name = name.substr(0, name.find_last_not_of(spaces) + 1);
        by = by * transform_of(name, read_number_list(text.substr(open + 1, close - open - 1)), at);
        at = close + 1;
    }
    return by;
}

} // namespace rampwright::ui

#include "trace/svg_numbers.hpp"

#include <rampwright/body/path_data.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <algorithm>
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

namespace {

/// A list of functions, each multiplied to the right.
template <class Read>
Affine2d read_functions(std::string_view text, Read read) {
    Affine2d by = Affine2d::Identity();
    const std::string separators = std::string(spaces) + ",";
    for (std::size_t at = text.find_first_not_of(separators); at != std::string_view::npos;
         at = text.find_first_not_of(separators, at)) {
        const std::size_t open = text.find('(', at), close = text.find(')', at);
        if (open == std::string_view::npos || close == std::string_view::npos || close < open)
            refuse(at, Core::tr("a transform without its brackets"));
        std::string_view name = text.substr(at, open - at);
        name = name.substr(0, name.find_last_not_of(spaces) + 1);
        by = by * read(name, text.substr(open + 1, close - open - 1), at);
        at = close + 1;
    }
    return by;
}

/// "12px", "0.5turn", "3": a number in user units or degrees.
double css_number(std::string_view word, std::size_t at) {
    using std::numbers::pi;
    struct Unit {
        std::string_view name;
        double worth;
    };
    static constexpr std::array<Unit, 4> angles{
        {{"grad", 0.9}, {"turn", 360}, {"deg", 1}, {"rad", 180 / pi}}};
    for (const Unit& unit : angles)
        if (word.ends_with(unit.name)) {
            const auto number = read_number_list(word.substr(0, word.size() - unit.name.size()));
            if (number.size() == 1) return number[0] * unit.worth;
        }
    const SvgLength length = read_svg_length(word);
    if (length.kind == SvgLength::Kind::share)
        refuse(at, Core::tr("a transform by a share of the element's own size"));
    return length.user_units;
}

std::vector<double> css_numbers(std::string_view list, std::size_t at) {
    const std::string separators = std::string(spaces) + ",";
    std::vector<double> numbers;
    for (std::size_t from = list.find_first_not_of(separators); from != std::string_view::npos;) {
        const std::size_t to = std::min(list.find_first_of(separators, from), list.size());
        numbers.push_back(css_number(list.substr(from, to - from), at));
        from = list.find_first_not_of(separators, to);
    }
    return numbers;
}

} // namespace

Affine2d read_svg_transform(std::string_view text) {
    return read_functions(text, [](std::string_view name, std::string_view list, std::size_t at) {
        return transform_of(name, read_number_list(list), at);
    });
}

Affine2d read_css_transform(std::string_view text) {
    if (text == "none") return Affine2d::Identity();
    return read_functions(text, [](std::string_view name, std::string_view list, std::size_t at) {
        std::vector<double> v = css_numbers(list, at);
        if (v.size() == 1) {
            if (name == "translateX") return transform_of("translate", {v[0], 0}, at);
            if (name == "translateY") return transform_of("translate", {0, v[0]}, at);
            if (name == "scaleX") return transform_of("scale", {v[0], 1}, at);
            if (name == "scaleY") return transform_of("scale", {1, v[0]}, at);
        }
        // In a style sheet the centre of a turn is a property of its own.
        if (name == "rotate" && v.size() != 1) v.clear();
        return transform_of(name, v, at);
    });
}

std::string_view find_in_style(std::string_view style, std::string_view property) {
    const auto trimmed = [](std::string_view text) {
        const std::size_t first = text.find_first_not_of(spaces);
        return first == std::string_view::npos
                   ? std::string_view{}
                   : text.substr(first, text.find_last_not_of(spaces) + 1 - first);
    };
    std::string_view found;
    while (!style.empty()) {
        const std::size_t end = std::min(style.find(';'), style.size()), colon = style.find(':');
        if (colon < end && trimmed(style.substr(0, colon)) == property)
            found = trimmed(style.substr(colon + 1, end - colon - 1));
        style.remove_prefix(std::min(end + 1, style.size()));
    }
    return found;
}

} // namespace rampwright::ui

#pragma once

#include <Eigen/Geometry>

#include <string_view>

/// Lengths and transforms as SVG writes them.
namespace rampwright::ui {

inline constexpr double mm_per_user_unit = 25.4 / 96; ///< where no length says otherwise (CSS 2.1, 4.3.2)

struct SvgLength {
    enum class Kind { user, real, share };
    double user_units = 0; ///< of a share: the number itself
    Kind kind = Kind::user;
};

/// "178mm", "6.5in", "40", "100%". @throws Problem whose `where` is "character N".
SvgLength read_svg_length(std::string_view text);

/// A list of transforms (SVG 1.1, 7.6): matrix, translate, scale, rotate, skewX, skewY; the first is the
/// outermost. @throws Problem whose `where` is "character N".
Eigen::Affine2d read_svg_transform(std::string_view text);

/// The same as a style sheet writes it (CSS Transforms 1, W3C 2019): lengths and angles with units, and
/// translateX, translateY, scaleX, scaleY besides. @throws Problem whose `where` is "character N"; so for
/// what has depth.
Eigen::Affine2d read_css_transform(std::string_view text);

/// What a style attribute says of a property, empty where nothing: of several the last.
std::string_view find_in_style(std::string_view style, std::string_view property);

} // namespace rampwright::ui

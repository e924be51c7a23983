#pragma once

#include <rampwright/project/project.hpp>

#include <array>
#include <string_view>
#include <utility>

namespace rampwright {

/// The words a file has for the shapes of pieces, in the order of the enum.
inline constexpr std::array<std::pair<std::string_view, PieceShape>, 5> piece_shape_words{
    {{"box", PieceShape::box},
     {"cylinder", PieceShape::cylinder},
     {"sphere", PieceShape::sphere},
     {"sheet", PieceShape::sheet},
     {"putty", PieceShape::putty}}};

/// How many sizes a shape has.
constexpr std::size_t size_count(PieceShape shape) {
    switch (shape) {
    case PieceShape::box:
    case PieceShape::sheet:
        return 3;
    case PieceShape::cylinder:
        return 2;
    case PieceShape::sphere:
        return 1;
    case PieceShape::putty:
        return 0;
    }
    return 0;
}

constexpr std::string_view word_of(PieceShape shape) {
    return piece_shape_words[static_cast<std::size_t>(shape)].first;
}

} // namespace rampwright

#include <rampwright/shaded/scene.hpp>

#include <algorithm>

namespace rampwright {

namespace {

struct Named {
    std::string_view word;
    Colour colour;
};

/// Colours as paint has them rather than a screen: none at full strength.
const std::array<Named, 31> known{{{"red", {0.76f, 0.20f, 0.18f}},       {"orange", {0.89f, 0.49f, 0.16f}},
                                   {"yellow", {0.93f, 0.78f, 0.25f}},    {"gold", {0.80f, 0.63f, 0.26f}},
                                   {"green", {0.24f, 0.52f, 0.30f}},     {"olive", {0.45f, 0.47f, 0.24f}},
                                   {"lime", {0.60f, 0.76f, 0.28f}},      {"teal", {0.12f, 0.50f, 0.50f}},
                                   {"turquoise", {0.22f, 0.66f, 0.66f}}, {"blue", {0.18f, 0.38f, 0.68f}},
                                   {"navy", {0.13f, 0.20f, 0.38f}},      {"purple", {0.43f, 0.26f, 0.55f}},
                                   {"violet", {0.48f, 0.32f, 0.64f}},    {"pink", {0.88f, 0.54f, 0.64f}},
                                   {"magenta", {0.74f, 0.22f, 0.50f}},   {"brown", {0.50f, 0.34f, 0.22f}},
                                   {"tan", {0.76f, 0.62f, 0.44f}},       {"beige", {0.85f, 0.78f, 0.64f}},
                                   {"cream", {0.94f, 0.90f, 0.78f}},     {"ivory", {0.94f, 0.91f, 0.82f}},
                                   {"white", {0.93f, 0.93f, 0.91f}},     {"silver", {0.75f, 0.77f, 0.79f}},
                                   {"grey", {0.55f, 0.57f, 0.59f}},      {"gray", {0.55f, 0.57f, 0.59f}},
                                   {"black", {0.19f, 0.19f, 0.21f}},     {"copper", {0.70f, 0.43f, 0.28f}},
                                   {"bronze", {0.58f, 0.44f, 0.27f}},    {"maroon", {0.45f, 0.14f, 0.16f}},
                                   {"crimson", {0.66f, 0.12f, 0.22f}},   {"lilac", {0.72f, 0.60f, 0.80f}},
                                   {"mint", {0.62f, 0.82f, 0.70f}}}};

std::optional<int> hex_digit(char c) {
    if (c >= '0' && c <= '9') return c - '0';
    if (c >= 'a' && c <= 'f') return c - 'a' + 10;
    return std::nullopt;
}

std::optional<Colour> by_number(std::string_view word) {
    if (word.size() != 7 || word[0] != '#') return std::nullopt;
    Colour colour;
    for (int i = 0; i < 3; ++i) {
        const auto high = hex_digit(word[static_cast<std::size_t>(1 + 2 * i)]);
        const auto low = hex_digit(word[static_cast<std::size_t>(2 + 2 * i)]);
        if (!high || !low) return std::nullopt;
        colour[i] = static_cast<float>(*high * 16 + *low) / 255.f;
    }
    return colour;
}

} // namespace

std::optional<Colour> colour_of(std::string_view paint) {
    std::string text(paint);
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    float lighter = 0; // towards white, or black
    constexpr std::string_view letters = "abcdefghijklmnopqrstuvwxyz0123456789#";
    for (std::size_t at = text.find_first_of(letters); at != std::string::npos;) {
        const std::size_t end = std::min(text.size(), text.find_first_not_of(letters, at));
        const std::string_view word = std::string_view(text).substr(at, end - at);
        at = text.find_first_of(letters, end);
        if (word == "light" || word == "pale") lighter = 0.4f;
        if (word == "dark" || word == "deep") lighter = -0.35f;
        std::optional<Colour> colour = by_number(word);
        for (const Named& each : known)
            if (word == each.word) colour = each.colour;
        if (!colour) continue;
        const float share = std::abs(lighter);
        return (1 - share) * *colour + share * Colour::Constant(lighter > 0 ? 1.f : 0.f);
    }
    return std::nullopt;
}

} // namespace rampwright

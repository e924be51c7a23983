#include <rampwright/units/decimal.hpp>

#include <algorithm>
#include <cassert>
#include <charconv>
#include <cmath>
#include <string_view>

namespace rampwright {

namespace {

constexpr int kept_digits = 15; // every decimal number of 15 digits survives a double

struct Decimal {
    bool negative = false;
    std::string digits; // 15 of them; the value is digits[0].digits[1..] * 10^exponent
    int exponent = 0;
};

Decimal to_decimal(double value) {
    assert(std::isfinite(value));
    char text[32];
    const auto end = std::to_chars(text, text + sizeof text, std::abs(value), std::chars_format::scientific,
                                   kept_digits - 1);
    const std::string_view written(text, static_cast<std::size_t>(end.ptr - text));
    const std::size_t e = written.find('e');
    Decimal decimal;
    decimal.negative = std::signbit(value);
    for (const char c : written.substr(0, e))
        if (c != '.') decimal.digits += c;
    const char* exponent = written.data() + e + 1;
    if (*exponent == '+') ++exponent;
    std::from_chars(exponent, end.ptr, decimal.exponent);
    return decimal;
}

// Keeps the first `count` digits, the half rounded up; a carry out of the front makes the exponent grow.
void round_digits(Decimal& decimal, int count) {
    if (count >= kept_digits) return;
    const bool up = count >= 0 && decimal.digits[static_cast<std::size_t>(count)] >= '5';
    decimal.digits.resize(static_cast<std::size_t>(std::max(count, 0)));
    if (!up) {
        if (decimal.digits.empty()) decimal.exponent = 0; // nothing is left: zero
        return;
    }
    auto digit = decimal.digits.rbegin();
    while (digit != decimal.digits.rend() && *digit == '9')
        *digit++ = '0';
    if (digit != decimal.digits.rend()) {
        ++*digit;
    } else {
        decimal.digits.insert(decimal.digits.begin(), '1');
        ++decimal.exponent;
    }
}

} // namespace

std::string to_fixed(double value, int decimals) {
    Decimal decimal = to_decimal(value);
    round_digits(decimal, decimal.exponent + 1 + decimals);
    const auto digit_at = [&](int power) {
        const int index = decimal.exponent - power;
        const bool known = index >= 0 && index < static_cast<int>(decimal.digits.size());
        return known ? decimal.digits[static_cast<std::size_t>(index)] : '0';
    };
    std::string text;
    for (int power = std::max(decimal.exponent, 0); power >= 0; --power)
        text += digit_at(power);
    if (decimals > 0) text += '.';
    for (int power = -1; power >= -decimals; --power)
        text += digit_at(power);
    const bool zero = text.find_first_not_of("0.") == std::string::npos;
    return decimal.negative && !zero ? "-" + text : text;
}

double round_to_significant(double value, int digits) {
    if (!std::isfinite(value)) return value;
    char text[32];
    const auto end = std::to_chars(text, text + sizeof text, value, std::chars_format::scientific,
                                   std::clamp(digits, 1, 17) - 1);
    double rounded = value;
    std::from_chars(text, end.ptr, rounded);
    return rounded;
}

int decimal_exponent(double value) {
    return value == 0 ? 0 : to_decimal(value).exponent;
}

} // namespace rampwright

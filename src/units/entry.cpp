#include "units/entry_text.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/units/entry.hpp>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <string>

namespace rampwright {

namespace {

constexpr std::size_t longest_text = 200;
constexpr int deepest_bracket = 20;

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}
bool is_mark(char c) {
    return c == '.' || c == ',';
}
bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

// A number on its way: with units in SI, without as it was typed.
struct Value {
    double number = 0;
    bool has_unit = false;
    const Unit* unit = nullptr; // the one unit of all its parts; null where they differ
};

struct Decimal {
    double number = 0;
    bool whole = false; // digits only: what may stand before, above and below in a fraction
};

// Recursive descent over the plain text; each function leaves `at_` behind what it read.
class Reader {
public:
    Reader(const PlainEntry& entry, Quantity quantity, UnitSystem system)
        : entry_(entry), text_(entry.text), quantity_(quantity), default_(default_unit(quantity, system)) {}

    double read() {
        skip_blanks();
        if (at_end()) fail(EntryFault::empty, Core::tr("nothing is written here"), type_example());
        const Value value = read_sum();
        if (!at_end()) fail_at_rest();
        const double si = value.has_unit ? value.number : to_si(value.number, default_);
        if (!std::isfinite(si))
            fail(EntryFault::too_large, Core::tr("the value is too large"),
                 Core::tr("type a smaller number"));
        if (quantity_ == Quantity::temperature && si < 0)
            fail(EntryFault::below_absolute_zero, Core::tr("nothing is colder than -273.15 °C"),
                 Core::tr("type a higher temperature"));
        return si;
    }

private:
    [[noreturn]] void fail(EntryFault fault, std::string wrong, std::string remedy) const {
        fail_at(at_, fault, std::move(wrong), std::move(remedy));
    }
    [[noreturn]] void fail_at(std::size_t at, EntryFault fault, std::string wrong, std::string remedy) const {
        throw EntryError(fault, entry_.typed_at[std::min(at, text_.size())], std::move(wrong),
                         std::move(remedy));
    }

    // What stands where an operator or the end should be.
    [[noreturn]] void fail_at_rest() const {
        if (text_[at_] == ')')
            fail(EntryFault::unclosed_bracket, Core::tr("a bracket closes that was never opened"),
                 Core::tr("take it out"));
        if (is_digit(text_[at_]) || is_mark(text_[at_]))
            fail(EntryFault::two_numbers, Core::tr("two numbers stand side by side"),
                 Core::tr("write a unit after each, or +, -, * or / between them"));
        const SpelledUnit other = match_any_unit(text_.substr(at_));
        if (other.unit && other.unit->quantity == quantity_)
            fail(EntryFault::not_understood, Core::tr("a unit stands here without a number"),
                 Core::tr("write the number before it"));
        if (other.unit)
            fail(EntryFault::wrong_quantity,
                 Core::tr("\"{unit}\" measures {other}, not {quantity}",
                          {{"unit", std::string(text_.substr(at_, other.length))},
                           {"other", Core::tr(in_words(other.unit->quantity))},
                           {"quantity", Core::tr(in_words(quantity_))}}),
                 type_example());
        const std::string word(text_.substr(at_, word_length()));
        if (!word.empty() && quantity_ == Quantity::plain)
            fail(EntryFault::unknown_unit, Core::tr("\"{word}\" is not a number", {{"word", word}}),
                 type_example());
        if (!word.empty())
            fail(EntryFault::unknown_unit,
                 Core::tr("\"{word}\" is not a unit for {quantity}",
                          {{"word", word}, {"quantity", Core::tr(in_words(quantity_))}}),
                 type_example());
        fail(EntryFault::not_understood, Core::tr("this sign is not understood here"), type_example());
    }

    std::string type_example() const {
        if (quantity_ == Quantity::plain) return Core::tr("type a number such as 0.15");
        return Core::tr("type {quantity} such as 12 {unit}", {{"quantity", Core::tr(in_words(quantity_))},
                                                              {"unit", std::string(default_.symbol)}});
    }

    // Letters from here on; a byte above ASCII counts as one, so that a foreign word is quoted whole.
    std::size_t word_length() const {
        std::size_t length = 0;
        while (at_ + length < text_.size() &&
               (is_letter(text_[at_ + length]) || static_cast<unsigned char>(text_[at_ + length]) >= 0x80))
            ++length;
        return length;
    }

    bool at_end() const { return at_ >= text_.size(); }
    char peek(std::size_t ahead = 0) const { return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0'; }
    bool number_starts(std::size_t ahead = 0) const {
        return is_digit(peek(ahead)) || (is_mark(peek(ahead)) && is_digit(peek(ahead + 1)));
    }
    void skip_blanks() {
        while (peek() == ' ')
            ++at_;
    }

    Value read_sum() {
        Value sum = read_product();
        while (peek() == '+' || peek() == '-') {
            const double sign = peek() == '+' ? 1 : -1;
            const std::size_t operator_at = at_++;
            Value term = read_product();
            if (sum.has_unit != term.has_unit) {
                Value& bare = sum.has_unit ? term : sum;
                const Value& other = sum.has_unit ? sum : term;
                if (other.unit != &default_)
                    fail_at(operator_at, EntryFault::unit_missing,
                            Core::tr("a number without a unit stands beside one in other units"),
                            Core::tr("write the unit after each number"));
                bare = {to_si(bare.number, default_), true, &default_};
            }
            if (sum.has_unit && quantity_ == Quantity::temperature) fail_temperature();
            sum.number += sign * term.number;
            if (sum.unit != term.unit) sum.unit = nullptr;
        }
        return sum;
    }

    Value read_product() {
        Value product = read_factor();
        while (peek() == '*' || peek() == '/') {
            const bool times = peek() == '*';
            ++at_;
            const Value factor = read_factor();
            if (factor.has_unit && (product.has_unit || !times))
                fail(EntryFault::unit_product,
                     times ? "two numbers with units are multiplied"
                           : "a number is divided by one with a unit",
                     "multiply and divide by plain numbers only");
            if (!times && factor.number == 0)
                fail(EntryFault::division_by_zero, Core::tr("a number is divided by zero"),
                     Core::tr("divide by another number"));
            if ((product.has_unit || factor.has_unit) && quantity_ == Quantity::temperature)
                fail_temperature();
            product.number = times ? product.number * factor.number : product.number / factor.number;
            if (factor.has_unit) product = {product.number, true, factor.unit};
        }
        return product;
    }

    [[noreturn]] void fail_temperature() const {
        fail(EntryFault::temperature_sum, Core::tr("degrees can't be added or multiplied"),
             Core::tr("type one temperature"));
    }

    Value read_factor() {
        double sign = 1;
        for (skip_blanks(); peek() == '+' || peek() == '-'; skip_blanks()) {
            if (peek() == '-') sign = -sign;
            ++at_;
        }
        Value value;
        if (peek() == '(') {
            value = read_bracket();
            if (value.has_unit && quantity_ == Quantity::temperature && sign < 0) fail_temperature();
            value.number *= sign;
        } else if (number_starts()) {
            value = read_number(sign);
        } else if (at_end()) {
            fail(EntryFault::not_understood, Core::tr("a number is missing at the end"), type_example());
        } else {
            fail_at_rest();
        }
        skip_blanks();
        return value;
    }

    Value read_bracket() {
        if (++depth_ > deepest_bracket)
            fail(EntryFault::too_long, Core::tr("the brackets are nested too deep"),
                 Core::tr("work out a part of it first"));
        ++at_;
        Value value = read_sum();
        if (at_end())
            fail(EntryFault::unclosed_bracket, Core::tr("a bracket is opened and not closed"),
                 Core::tr("close it"));
        if (peek() != ')') fail_at_rest();
        ++at_;
        --depth_;
        const Unit* unit = read_unit();
        if (unit && value.has_unit)
            fail(EntryFault::unit_product, Core::tr("a unit follows a bracket that has units in it"),
                 Core::tr("take one of them out"));
        if (unit) value = {to_si(value.number, *unit), true, unit};
        return value;
    }

    // 12, 7/8, 4 3/8 in, 4 ft 2 in. The sign reaches every part, and the inside of a temperature.
    Value read_number(double sign) {
        const double number = sign * read_mixed();
        const Unit* unit = read_unit();
        if (!unit) return {number, false, nullptr};
        Value value{to_si(number, *unit), true, unit};
        const Unit* last = unit;
        while (skip_to_next_part(*last)) {
            const double part = sign * read_mixed();
            const Unit* smaller = read_unit();
            if (!smaller && last->symbol == "ft") smaller = find_unit("in"); // 4' 2
            if (!smaller || smaller->scale >= last->scale)
                fail(EntryFault::two_numbers, Core::tr("two numbers stand side by side"),
                     Core::tr("write a unit after each, the greater first, or an operator between them"));
            if (quantity_ == Quantity::temperature) fail_temperature();
            value = {value.number + to_si(part, *smaller), true, nullptr};
            last = smaller;
        }
        return value;
    }

    // Another number right behind one with a unit; 4'-2" is written so by draughtsmen and is no difference.
    bool skip_to_next_part(const Unit& last) {
        if (last.symbol == "ft" && at_ > 0 && text_[at_ - 1] == '\'' && peek() == '-' && is_digit(peek(1))) {
            ++at_;
            return true;
        }
        const std::size_t before = at_;
        skip_blanks();
        if (number_starts()) return true;
        at_ = before;
        return false;
    }

    double read_mixed() {
        const Decimal first = read_decimal();
        if (first.whole) {
            if (const auto part = read_fraction_part()) return first.number + *part;
        }
        // 7/8 in is seven eighths of an inch: the quotient of plain numbers comes before the unit.
        double number = first.number;
        for (std::size_t slash = next_slash(); slash != 0; slash = next_slash()) {
            at_ += slash;
            skip_blanks();
            const double divisor = read_decimal().number;
            if (divisor == 0)
                fail(EntryFault::division_by_zero, Core::tr("a number is divided by zero"),
                     Core::tr("divide by another number"));
            number /= divisor;
        }
        return number;
    }

    // Bytes up to and with a '/' that a number follows, else 0.
    std::size_t next_slash() const {
        std::size_t ahead = 0;
        while (peek(ahead) == ' ')
            ++ahead;
        if (peek(ahead) != '/') return 0;
        std::size_t behind = ahead + 1;
        while (peek(behind) == ' ')
            ++behind;
        return number_starts(behind) ? ahead + 1 : 0;
    }

    // The 3/8 of "4 3/8" and of "4-3/8"; nothing where no such fraction follows.
    std::optional<double> read_fraction_part() {
        const std::size_t before = at_;
        const bool hyphen = peek() == '-';
        if (hyphen) {
            ++at_;
        } else {
            skip_blanks();
        }
        if (at_ == before || !is_digit(peek())) {
            at_ = before;
            return std::nullopt;
        }
        const Decimal above = read_decimal();
        const std::size_t slash = next_slash();
        if (!above.whole || slash == 0 || (hyphen && slash != 1)) {
            at_ = before;
            return std::nullopt;
        }
        at_ += slash;
        skip_blanks();
        const Decimal below = read_decimal();
        if (!below.whole || above.number >= below.number) {
            at_ = before; // 4-9/8 is a difference; 4 9/8 is told as two numbers
            return std::nullopt;
        }
        if (hyphen && !hyphen_joins()) {
            at_ = before;
            fail(EntryFault::unclear_hyphen, Core::tr("the hyphen may join a fraction or subtract it"),
                 Core::tr("leave a blank instead of the hyphen, or one on either side of it"));
        }
        return above.number / below.number;
    }

    // Who writes in inches or ounces joins the fraction with a hyphen; in metric it may as well be a
    // difference.
    bool hyphen_joins() const {
        std::size_t ahead = at_;
        while (ahead < text_.size() && text_[ahead] == ' ')
            ++ahead;
        const Unit* unit = match_unit(text_.substr(ahead), quantity_).unit;
        if (!unit) unit = &default_;
        for (const std::string_view symbol : {"in", "ft", "yd", "oz", "lb"})
            if (unit->symbol == symbol) return true;
        return false;
    }

    Decimal read_decimal() {
        std::string digits;
        int marks = 0;
        const std::size_t start = at_;
        for (; is_digit(peek()) || is_mark(peek()); ++at_) {
            if (is_mark(peek())) ++marks;
            digits += is_mark(peek()) ? '.' : peek();
        }
        if (marks > 1) {
            at_ = start;
            fail(EntryFault::several_marks, Core::tr("a number has more than one decimal mark"),
                 Core::tr("leave out the marks between thousands; \".\" and \",\" both are a decimal mark"));
        }
        const std::size_t exponent_sign = peek(1) == '+' || peek(1) == '-' ? 1 : 0;
        const bool exponent = (peek() == 'e' || peek() == 'E') && is_digit(peek(1 + exponent_sign));
        if (exponent) {
            digits += 'e';
            if (peek(1) == '-') digits += '-';
            at_ += 1 + exponent_sign;
            for (; is_digit(peek()); ++at_)
                digits += peek();
        }
        double number = 0;
        const auto result = std::from_chars(digits.data(), digits.data() + digits.size(), number);
        if (result.ec == std::errc::result_out_of_range)
            fail(EntryFault::too_large, Core::tr("a number is too large or too close to zero"),
                 Core::tr("type an ordinary number"));
        return {number, marks == 0 && !exponent};
    }

    // Null where no word or sign of a unit follows; an unfitting one is refused where it stands.
    const Unit* read_unit() {
        const std::size_t before = at_;
        skip_blanks();
        const SpelledUnit spelled = match_unit(text_.substr(at_), quantity_);
        if (!spelled.unit) {
            if (quantity_ == Quantity::temperature && text_.substr(at_).starts_with("°")) {
                at_ += std::string_view("°").size(); // 20° without a letter: the person's own degrees
                return &default_;
            }
            const char next = peek();
            const bool unit_like = is_letter(next) || static_cast<unsigned char>(next) >= 0x80 ||
                                   next == '%' || next == '"' || next == '\'';
            if (unit_like) fail_at_rest();
            at_ = before;
            return nullptr;
        }
        at_ += spelled.length;
        if (is_letter(text_[at_ - 1]) && peek() == '.' && !is_digit(peek(1))) ++at_; // "in."
        return spelled.unit;
    }

    const PlainEntry& entry_;
    const std::string_view text_;
    const Quantity quantity_;
    const Unit& default_;
    std::size_t at_ = 0;
    int depth_ = 0;
};

std::string column(std::size_t position) {
    return "column " + std::to_string(position + 1);
}

} // namespace

EntryError::EntryError(EntryFault fault, std::size_t position, std::string what_is_wrong,
                       std::string what_to_do)
    : Problem(Exit::wrong_call, column(position), std::move(what_is_wrong), std::move(what_to_do)),
      fault_(fault),
      position_(position) {}

double parse_entry(std::string_view text, Quantity quantity, UnitSystem system) {
    if (text.size() > longest_text)
        throw EntryError(EntryFault::too_long, longest_text, "the text is too long", "type a shorter one");
    const PlainEntry entry = to_plain_entry(text);
    return Reader(entry, quantity, system).read();
}

} // namespace rampwright

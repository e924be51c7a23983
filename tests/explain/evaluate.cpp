#include <charconv>
#include <cmath>
#include <explain/evaluate.hpp>
#include <numbers>
#include <stdexcept>
#include <string>

namespace rampwright::test {

namespace {

/// Recursive descent over sum, product, power, atom.
class Evaluator {
public:
    explicit Evaluator(std::string_view text) : text_(text) {}
    double whole() {
        const double value = sum();
        spaces();
        if (!text_.empty()) throw std::runtime_error("not understood: " + std::string(text_));
        return value;
    }

private:
    void spaces() {
        while (text_.starts_with(' '))
            text_.remove_prefix(1);
    }
    bool take(std::string_view sign) {
        spaces();
        if (!text_.starts_with(sign)) return false;
        text_.remove_prefix(sign.size());
        return true;
    }
    double sum() {
        double value = product();
        for (;;) {
            if (take("+"))
                value += product();
            else if (take("−"))
                value -= product();
            else
                return value;
        }
    }
    double product() {
        double value = power();
        for (;;) {
            if (take("×"))
                value *= power();
            else if (take("/"))
                value /= power();
            else
                return value;
        }
    }
    double power() {
        const double base = atom();
        return take("^") ? std::pow(base, power()) : base;
    }
    double bracket() {
        if (!take("(")) throw std::runtime_error("no bracket: " + std::string(text_));
        const double value = sum();
        if (!take(")")) throw std::runtime_error("bracket left open: " + std::string(text_));
        return value;
    }
    double atom() {
        if (take("−")) return -atom();
        if (take("√")) return std::sqrt(bracket());
        if (take("sin")) return std::sin(bracket());
        if (take("cos")) return std::cos(bracket());
        if (take("tanh")) return std::tanh(bracket());
        if (take("round")) return std::floor(bracket() + 0.5 + 1e-9);
        if (take("floor")) return std::floor(bracket() + 1e-9);
        if (take("Φ")) return std::erfc(-bracket() / std::numbers::sqrt2) / 2;
        spaces();
        if (text_.starts_with('(')) return bracket();
        double value = 0;
        const auto [end, error] =
            std::from_chars(text_.data(), text_.data() + text_.size(), value, std::chars_format::fixed);
        if (error != std::errc()) throw std::runtime_error("no number: " + std::string(text_));
        text_.remove_prefix(std::size_t(end - text_.data()));
        return value;
    }
    std::string_view text_;
};

} // namespace

double evaluate(std::string_view text) {
    return Evaluator(text).whole();
}

} // namespace rampwright::test

#include "project/number_text.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/project/document.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

constexpr std::size_t longest_line = 100;

/// A list of plain values or of such lists, or an object of them: what may stand on one line.
bool is_flat(const Json& value, bool objects_too) {
    if (!value.is_structured()) return true;
    if (value.is_object() && !objects_too) return false;
    for (const Json& child : value)
        if (!is_flat(child, false)) return false;
    return true;
}

class TextWriter {
public:
    std::string take() { return std::move(text_); }

    /// @param in_list whether `value` is an element of a list: a row, which may be an object.
    void write(const Json& value, std::size_t depth, bool in_list) {
        if (!value.is_structured()) return write_leaf(value);
        if (value.empty()) {
            text_ += value.is_array() ? "[]" : "{}";
            return;
        }
        if (is_flat(value, in_list) && fits(value)) return;
        const char* brackets = value.is_array() ? "[]" : "{}";
        text_ += brackets[0];
        bool first = true;
        for (const auto& [key, child] : value.items()) {
            if (!first) text_ += ',';
            first = false;
            text_ += '\n';
            text_.append(2 * (depth + 1), ' ');
            if (value.is_object()) write_key(key);
            write(child, depth + 1, value.is_array());
        }
        text_ += '\n';
        text_.append(2 * depth, ' ');
        text_ += brackets[1];
    }

private:
    /// Writes on one line, or takes it back where the line gets too long.
    bool fits(const Json& value) {
        const std::size_t mark = text_.size();
        const std::size_t line = text_.rfind('\n') == std::string::npos ? 0 : text_.rfind('\n') + 1;
        write_row(value);
        if (text_.size() - line <= longest_line) return true;
        text_.resize(mark);
        return false;
    }

    void write_row(const Json& value) {
        if (!value.is_structured()) return write_leaf(value);
        const char* brackets = value.is_array() ? "[]" : "{}";
        text_ += brackets[0];
        bool first = true;
        for (const auto& [key, child] : value.items()) {
            if (!first) text_ += ", ";
            first = false;
            if (value.is_object()) write_key(key);
            write_row(child);
        }
        text_ += brackets[1];
    }

    void write_key(const std::string& key) {
        write_leaf(key);
        text_ += ": ";
    }

    /// Most texts need no escaping, and a serializer for each would cost most of the time.
    static bool is_plain(const std::string& text) {
        return std::all_of(text.begin(), text.end(),
                           [](char c) { return c >= ' ' && c < 0x7F && c != '"' && c != '\\'; });
    }

    void write_leaf(const Json& value) {
        if (value.is_number_float()) {
            const double number = value.get<double>();
            if (!std::isfinite(number))
                throw Problem(Exit::could_not, "-", Core::tr("a number that is not finite cannot be written"),
                              Core::tr("give a finite number"));
            text_ += number_text(number);
            return;
        }
        if (value.is_string() && is_plain(value.get_ref<const std::string&>())) {
            text_ += '"';
            text_ += value.get_ref<const std::string&>();
            text_ += '"';
            return;
        }
        try {
            text_ += value.dump();
        } catch (const Json::type_error&) {
            throw Problem(Exit::could_not, "-", Core::tr("a text is not valid UTF-8"),
                          Core::tr("enter it again"));
        }
    }

    std::string text_;
};

} // namespace

std::string to_text(const Document& document) {
    TextWriter writer;
    writer.write(document.root, 0, false);
    return writer.take() + "\n";
}

} // namespace rampwright

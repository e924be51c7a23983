#pragma once

#include <rampwright/core/json.hpp>
#include <rampwright/project/project.hpp>

#include <initializer_list>
#include <limits>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace rampwright {

/// What a number may be, in the file's own unit: from `low` (or above it) to `high`.
struct Limits {
    double low, high;
    bool above_low = false;
};
constexpr Limits from_to(double low, double high) {
    return {low, high, false};
}
constexpr Limits above(double low, double high) {
    return {low, high, true};
}

/// The value taken where the file gives none, in the file's own unit.
struct Default {
    double value;
    double sigma = 0;
    Tag tag = Tag::memory;
};

/// A usual length or mass from memory, with the uncertainty of one that nobody has measured: 0.3 mm
/// (small parts a twentieth of themselves, or a bore would be drawn smaller than its axle) and 0.1 g.
constexpr Default usual_length(double mm) {
    return {mm, mm < 6 ? mm / 20 : 0.3, Tag::memory};
}
constexpr Default usual_mass(double g) {
    return {g, 0.1, Tag::memory};
}

template <class Enum>
using Words = std::initializer_list<std::pair<std::string_view, Enum>>;

/// A place in the JSON tree while it is read: checks type, range and finiteness, turns the file's unit
/// (told by the key's ending) into SI, and lists each default taken. Missing and null are alike.
/// Every method that reads throws Problem (Exit::not_ours) with the place's JSON pointer.
class Node {
public:
    Node(const Json& root, std::vector<Assumed>& assumed);

    bool present() const { return value_ != nullptr; }
    /// Whether the file says null: for the few places where that is said on purpose.
    bool stated_null() const { return stated_null_; }
    const std::string& where() const { return where_; }
    /// The member of that name; an object must stand here, or nothing.
    Node operator[](std::string_view key) const;
    /// The same, in the unit of this place's key: `min` and `max` of `wheelbase_mm`.
    Node inner(std::string_view key) const;
    /// A place in a list that is not there, for the default that stands in for it.
    Node element(std::size_t index) const;
    /// The elements of a list; none where there is no list.
    std::vector<Node> rows() const;
    /// The members of an object, by name.
    std::vector<std::pair<std::string, Node>> members() const;
    /// What stands here as the file has it, cut short where it is long.
    std::string shown() const;
    /// Refuses anything but an object or nothing.
    const Node& object() const;

    /// @return SI.
    double number(Limits limits) const;
    double number(Limits limits, Default otherwise) const;
    std::optional<double> maybe_number(Limits limits) const;
    int whole(int low, int high) const;
    int whole(int low, int high, int otherwise) const;

    std::string text(std::string otherwise = {}) const;
    /// A text or a whole number: race numbers, lanes.
    std::string label() const;
    bool flag() const;
    bool flag(bool otherwise) const;

    template <class Enum>
    Enum word(Words<Enum> words) const {
        return word(std::span(words.begin(), words.size()));
    }
    template <class Enum>
    Enum word(std::span<const std::pair<std::string_view, Enum>> words) const {
        const std::string found = word_text();
        std::vector<std::string_view> known;
        for (const auto& [name, value] : words) {
            if (name == found) return value;
            known.push_back(name);
        }
        refuse_word(found, known);
    }
    template <class Enum>
    Enum word(Words<Enum> words, Enum otherwise) const {
        return word(std::span(words.begin(), words.size()), otherwise);
    }
    template <class Enum>
    Enum word(std::span<const std::pair<std::string_view, Enum>> words, Enum otherwise) const {
        if (present()) return word(words);
        for (const auto& [name, value] : words)
            if (value == otherwise) assume(std::string(name));
        return otherwise;
    }

    /// A list of `count` numbers, each within limits. @return SI.
    std::vector<double> numbers(std::size_t count, Limits limits) const;
    Vec2 point2(Limits limits) const;
    Vec3 point3(Limits limits) const;

    /// Lists a default as taken here.
    void assume(std::string word, Tag tag = Tag::memory) const;
    void assume(Default number) const;
    /// The same where the unit is not told by the key.
    void assume(Default number, std::string_view unit) const;
    /// A default in SI (worked out from other values), listed in the file's unit.
    double assume_si(double value, double sigma_in_file_unit, Tag tag = Tag::memory) const;

    [[noreturn]] void refuse(const std::string& wrong, const std::string& remedy) const;
    [[noreturn]] void refuse_missing(const std::string& remedy) const;
    [[noreturn]] void refuse_word(const std::string& found, const std::vector<std::string_view>& known) const;

private:
    Node(const Json* value, std::string where, std::string unit_key, std::vector<Assumed>* assumed);

    [[noreturn]] void refuse_type(const std::string& wanted) const;
    double raw_number(Limits limits) const;
    std::string word_text() const;
    const Json& required(const std::string& wanted) const;

    const Json* value_ = nullptr; ///< nullptr: missing or null
    bool stated_null_ = false;
    std::string where_;
    std::string unit_key_; ///< the nearest key above, whose ending tells the unit
    std::vector<Assumed>* assumed_;
};

} // namespace rampwright

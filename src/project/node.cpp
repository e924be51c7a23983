#include "project/node.hpp"

#include "project/number_text.hpp"
#include "project/pointer_token.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/units/key_unit.hpp>

#include <cmath>

namespace rampwright {

namespace {

/// The value as the file has it, short enough for a message.
std::string found_text(const Json& value) {
    constexpr std::size_t longest = 40;
    if (value.is_number_float()) return plain_number(value.get<double>());
    std::string text = value.dump(-1, ' ', false, Json::error_handler_t::replace);
    if (text.size() <= longest) return text;
    std::size_t end = longest;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80)
        --end; // no half character
    return text.substr(0, end) + "...";
}

std::string kind_of(const Json& value) {
    switch (value.type()) {
    case Json::value_t::object:
        return Core::tr("an object");
    case Json::value_t::array:
        return Core::tr("a list");
    case Json::value_t::string:
        return Core::tr("the text {text}", {{"text", found_text(value)}});
    case Json::value_t::boolean:
        return found_text(value);
    default:
        return Core::tr("the number {number}", {{"number", found_text(value)}});
    }
}

/// The unit that the key's ending tells; without one, a plain number.
Unit unit_of(std::string_view key) {
    const Unit* unit = find_key_unit(key);
    return unit != nullptr ? *unit : Unit{"", Quantity::plain, 1, 0, ""};
}

std::string with_unit(double value, const Unit& unit) {
    return plain_number(value) + (unit.symbol.empty() ? "" : " ") + std::string(unit.symbol);
}

} // namespace

Node::Node(const Json& root, std::vector<Assumed>& assumed) : value_(&root), assumed_(&assumed) {}

Node::Node(const Json* value, std::string where, std::string unit_key, std::vector<Assumed>* assumed)
    : value_(value != nullptr && value->is_null() ? nullptr : value),
      stated_null_(value != value_),
      where_(std::move(where)),
      unit_key_(std::move(unit_key)),
      assumed_(assumed) {}

const Node& Node::object() const {
    if (present() && !value_->is_object()) refuse_type(Core::tr("an object { ... }"));
    return *this;
}

Node Node::operator[](std::string_view key) const {
    object();
    const Json* child = nullptr;
    if (present()) {
        const auto member = value_->find(std::string(key));
        if (member != value_->end()) child = &*member;
    }
    return {child, where_ + "/" + pointer_token(key), std::string(key), assumed_};
}

Node Node::inner(std::string_view key) const {
    Node child = (*this)[key];
    child.unit_key_ = unit_key_;
    return child;
}

Node Node::element(std::size_t index) const {
    return {nullptr, where_ + "/" + std::to_string(index), unit_key_, assumed_};
}

std::vector<Node> Node::rows() const {
    std::vector<Node> rows;
    if (!present()) return rows;
    if (!value_->is_array()) refuse_type(Core::tr("a list [ ... ]"));
    rows.reserve(value_->size());
    for (const Json& element : *value_)
        rows.push_back(Node(&element, where_ + "/" + std::to_string(rows.size()), unit_key_, assumed_));
    return rows;
}

std::vector<std::pair<std::string, Node>> Node::members() const {
    object();
    std::vector<std::pair<std::string, Node>> members;
    if (present())
        for (const auto& [key, value] : value_->items())
            members.emplace_back(key, (*this)[key]);
    return members;
}

std::string Node::shown() const {
    return present() ? found_text(*value_) : "";
}

double Node::raw_number(Limits limits) const {
    const Json& found = required("a number");
    if (!found.is_number()) refuse_type(Core::tr("a number"));
    const double value = found.get<double>();
    const Unit unit = unit_of(unit_key_);
    const bool inside = std::isfinite(value) && value <= limits.high &&
                        (limits.above_low ? value > limits.low : value >= limits.low);
    if (!inside)
        refuse(Core::tr("{what} is out of range", {{"what", with_unit(value, unit)}}),
               limits.above_low
                   ? Core::tr("give a value above {low}, up to {high}",
                              {{"low", plain_number(limits.low)}, {"high", with_unit(limits.high, unit)}})
                   : Core::tr("give a value from {low} to {high}",
                              {{"low", plain_number(limits.low)}, {"high", with_unit(limits.high, unit)}}));
    return value;
}

double Node::number(Limits limits) const {
    const Unit unit = unit_of(unit_key_);
    return to_si(raw_number(limits), unit);
}

double Node::number(Limits limits, Default otherwise) const {
    if (present()) return number(limits);
    assume(otherwise);
    const Unit unit = unit_of(unit_key_);
    return to_si(otherwise.value, unit);
}

std::optional<double> Node::maybe_number(Limits limits) const {
    if (!present()) return std::nullopt;
    return number(limits);
}

int Node::whole(int low, int high) const {
    const double value = raw_number(from_to(low, high));
    if (value != std::floor(value))
        refuse(Core::tr("{what} is not a whole number", {{"what", plain_number(value)}}),
               Core::tr("give a whole number from {what} to {other}",
                        {{"what", std::to_string(low)}, {"other", std::to_string(high)}}));
    return static_cast<int>(value);
}

int Node::whole(int low, int high, int otherwise) const {
    if (present()) return whole(low, high);
    assume(Default{static_cast<double>(otherwise)});
    return otherwise;
}

std::string Node::text(std::string otherwise) const {
    if (!present()) return otherwise;
    if (!value_->is_string()) refuse_type(Core::tr("a text in quotes"));
    return value_->get<std::string>();
}

std::string Node::label() const {
    if (present() && value_->is_number_integer()) return value_->dump();
    return text();
}

bool Node::flag() const {
    const Json& found = required("true or false");
    if (!found.is_boolean()) refuse_type(Core::tr("true or false"));
    return found.get<bool>();
}

bool Node::flag(bool otherwise) const {
    if (present()) return flag();
    assume(otherwise ? "true" : "false");
    return otherwise;
}

std::string Node::word_text() const {
    required("a word in quotes");
    if (!value_->is_string()) refuse_type(Core::tr("a word in quotes"));
    return value_->get<std::string>();
}

std::vector<double> Node::numbers(std::size_t count, Limits limits) const {
    required("a list of " + std::to_string(count) + " numbers");
    const std::vector<Node> elements = rows();
    if (elements.size() != count)
        refuse(Core::tr("a list of {what} where {other} are needed",
                        {{"what", std::to_string(elements.size())}, {"other", std::to_string(count)}}),
               Core::tr("give {what} numbers", {{"what", std::to_string(count)}}));
    std::vector<double> numbers;
    for (const Node& element : elements)
        numbers.push_back(element.number(limits));
    return numbers;
}

Vec2 Node::point2(Limits limits) const {
    const std::vector<double> n = numbers(2, limits);
    return {n[0], n[1]};
}

Vec3 Node::point3(Limits limits) const {
    const std::vector<double> n = numbers(3, limits);
    return {n[0], n[1], n[2]};
}

void Node::assume(std::string word, Tag tag) const {
    assumed_->push_back({where_, std::move(word), "", 0, tag});
}

void Node::assume(Default number) const {
    assume(number, unit_of(unit_key_).symbol);
}

void Node::assume(Default number, std::string_view unit) const {
    assumed_->push_back({where_, number.value, std::string(unit), number.sigma, number.tag});
}

double Node::assume_si(double value, double sigma_in_file_unit, Tag tag) const {
    const Unit unit = unit_of(unit_key_);
    assume(Default{from_si(value, unit), sigma_in_file_unit, tag});
    return value;
}

const Json& Node::required(const std::string& wanted) const {
    if (!present()) refuse_missing(Core::tr("give {what}", {{"what", Core::tr(wanted)}}));
    return *value_;
}

void Node::refuse(const std::string& wrong, const std::string& remedy) const {
    throw Problem(Exit::not_ours, where_.empty() ? "-" : where_, wrong, remedy);
}

void Node::refuse_missing(const std::string& remedy) const {
    refuse(Core::tr("a value is missing here"), remedy);
}

void Node::refuse_type(const std::string& wanted) const {
    refuse(Core::tr("{what} stands where {other} is needed", {{"what", kind_of(*value_)}, {"other", wanted}}),
           Core::tr("give {what}", {{"what", wanted}}));
}

void Node::refuse_word(const std::string& found, const std::vector<std::string_view>& known) const {
    std::string list;
    for (const std::string_view word : known)
        list += (list.empty() ? "\"" : ", \"") + std::string(word) + "\"";
    refuse(Core::tr("{what} is not known here", {{"what", found_text(Json(found))}}),
           Core::tr("use one of {what}", {{"what", list}}));
}

} // namespace rampwright

#include "project/parse.hpp"

#include "project/pointer_token.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/project/document.hpp>

#include <charconv>
#include <cstdint>
#include <string_view>
#include <unordered_set>

namespace rampwright {

namespace {

constexpr std::size_t deepest_nesting = 64;

/// `line L, column C` of a byte, columns counted in characters.
std::string line_and_column(std::string_view text, std::size_t byte) {
    const std::string_view before = text.substr(0, std::min(byte, text.size()));
    std::size_t line = 1, column = 1;
    for (const char c : before) {
        if (c == '\n') {
            ++line;
            column = 1;
        } else if ((static_cast<unsigned char>(c) & 0xC0) != 0x80) {
            ++column;
        }
    }
    return "line " + std::to_string(line) + ", column " + std::to_string(column);
}

/// The parser's reason without its own place and its echo of the text.
std::string reason_of(std::string_view what) {
    constexpr std::string_view after_place = "column ";
    if (const auto place = what.find(after_place); place != std::string_view::npos)
        if (const auto colon = what.find(": ", place); colon != std::string_view::npos)
            what = what.substr(colon + 2);
    if (const auto last_read = what.find("; last read"); last_read != std::string_view::npos)
        what = what.substr(0, last_read);
    return std::string(what);
}

/// Builds the tree from the parser's events. The library's own builder would keep the last of two
/// equal keys and looks for each key along the whole object; both matter for a file from outside.
class TreeBuilder {
public:
    explicit TreeBuilder(std::string_view text) : text_(text) {}

    Json take() { return std::move(root_); }

    bool null() { return leaf(nullptr); }
    bool boolean(bool value) { return leaf(value); }
    bool number_integer(Json::number_integer_t value) { return leaf(value); }
    bool number_unsigned(Json::number_unsigned_t value) { return leaf(value); }
    bool number_float(Json::number_float_t, const std::string& written) {
        // Read again, because the library's own reading goes by the C locale's decimal mark, which
        // also stands in `written`.
        std::string digits = written;
        for (char& c : digits)
            if ((c < '0' || c > '9') && c != '+' && c != '-' && c != 'e' && c != 'E') c = '.';
        double value = 0;
        const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
        // Too small to hold is zero, as the nearest double; too large the parser has refused.
        if (error == std::errc::result_out_of_range) value = 0;
        return leaf(value);
    }
    bool string(std::string& value) { return leaf(std::move(value)); }
    bool binary(Json::binary_t&) { return false; }

    bool start_object(std::size_t) { return open(Json::object()); }
    bool end_object() { return close(); }
    bool start_array(std::size_t) { return open(Json::array()); }
    bool end_array() { return close(); }

    bool key(std::string& name) {
        Level& level = levels_.back();
        level.key = std::move(name);
        if (!level.seen.insert(level.key).second)
            throw Problem(Exit::not_ours, here(),
                          Core::tr("the key \"{what}\" stands twice in one object", {{"what", level.key}}),
                          Core::tr("keep one of them"));
        return true;
    }

    bool parse_error(std::size_t position, const std::string&, const nlohmann::detail::exception& error) {
        constexpr int number_overflow = 406;
        const std::string where = line_and_column(text_, position == 0 ? 0 : position - 1);
        if (error.id == number_overflow)
            throw Problem(Exit::not_ours, where, Core::tr("a number too large to hold"),
                          Core::tr("give a number between -1e308 and 1e308"));
        throw Problem(Exit::not_ours, where,
                      Core::tr("the text is not JSON: {what}", {{"what", reason_of(error.what())}}),
                      Core::tr("correct the text there, or take an older copy of the file"));
    }

private:
    struct Level {
        Json* node = nullptr;
        std::string key;
        std::unordered_set<std::string> seen;
    };

    std::string here() const {
        std::string pointer;
        for (const Level& level : levels_) {
            // In the lists around the innermost level the element being read is already there.
            const std::size_t index = level.node->size() - (&level == &levels_.back() ? 0 : 1);
            pointer += "/" + (level.node->is_array() ? std::to_string(index) : pointer_token(level.key));
        }
        return pointer;
    }

    Json* put(Json&& value) {
        if (levels_.empty()) {
            root_ = std::move(value);
            return &root_;
        }
        Level& level = levels_.back();
        if (level.node->is_array()) {
            level.node->push_back(std::move(value));
            return &level.node->back();
        }
        // Straight into the list of members: `key` has already seen to it that the name is new.
        auto& members = static_cast<Json::object_t::Container&>(level.node->get_ref<Json::object_t&>());
        return &members.emplace_back(level.key, std::move(value)).second;
    }

    bool leaf(Json&& value) {
        put(std::move(value));
        return true;
    }

    bool open(Json&& container) {
        if (levels_.size() == deepest_nesting)
            throw Problem(Exit::not_ours, here(),
                          Core::tr("lists and objects nested more than {what} deep",
                                   {{"what", std::to_string(deepest_nesting)}}),
                          Core::tr("a project needs no more than ten; take an older copy of the file"));
        Json* node = put(std::move(container));
        levels_.push_back({node, {}, {}});
        return true;
    }

    bool close() {
        levels_.pop_back();
        return true;
    }

    std::string_view text_;
    Json root_;
    std::vector<Level> levels_;
};

void check_that_it_is_ours(const Json& root) {
    const auto format = root.is_object() ? root.find("format") : root.end();
    if (!root.is_object() || format == root.end() || *format != "rampwright-project")
        throw Problem(Exit::not_ours, root.is_object() ? "/format" : "-",
                      Core::tr("this is not a Rampwright project"),
                      Core::tr("open a file whose \"format\" is \"rampwright-project\""));
    const auto version = root.find("version");
    if (version == root.end() || !version->is_number_unsigned() || *version == 0)
        throw Problem(Exit::not_ours, "/version", Core::tr("the version of the format is missing or damaged"),
                      Core::tr("it should be a whole number, {what} for this program",
                               {{"what", std::to_string(project_file_version)}}));
    if (version->get<std::uint64_t>() > project_file_version)
        throw Problem(Exit::not_ours, "/version",
                      Core::tr("the file is of version {what}, newer than this program reads ({other})",
                               {{"what", version->dump()}, {"other", std::to_string(project_file_version)}}),
                      Core::tr("open it with a newer Rampwright"));
}

} // namespace

Json parse_tree(std::string_view text) {
    if (text.size() > largest_project_file)
        throw Problem(Exit::not_ours, "-",
                      Core::tr("the file is larger than {what} MiB",
                               {{"what", std::to_string(largest_project_file >> 20)}}),
                      Core::tr("a project is far smaller; check that this is the right file"));
    TreeBuilder builder(text);
    Json::sax_parse(text.begin(), text.end(), &builder);
    return builder.take();
}

Document parse_document(std::string_view text) {
    Document document{parse_tree(text)};
    check_that_it_is_ours(document.root);
    return document;
}

} // namespace rampwright

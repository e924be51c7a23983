#include "project/edit_support.hpp"

#include <rampwright/body/outline.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/units/key_unit.hpp>

#include <cmath>

namespace rampwright {

namespace {

bool runs_round_once(const std::vector<PlanPoint>& points) {
    Outline outline;
    for (const PlanPoint& point : points)
        outline.push_back({point.at, point.smooth});
    try {
        check_outline(outline, {});
        return true;
    } catch (const Problem&) {
        return false;
    }
}

/// Refuses what would make an outline cross itself. A file may come with such an outline: then it may be
/// edited until it is mended.
void keep_outlines_simple(const Document& before, const Document& after, const Project& read) {
    const Json none;
    const auto member = [&none](const Json& root, const std::string& pointer) -> const Json& {
        const Json::json_pointer place(pointer);
        return root.contains(place) ? root.at(place) : none;
    };
    if (member(before.root, "/cars").size() != member(after.root, "/cars").size()) return;
    for (std::size_t car = 0; car < read.cars.size(); ++car)
        for (const bool plan : {false, true}) {
            const std::string place =
                "/cars/" + std::to_string(car) + "/body/" + (plan ? "plan_mm" : "profile_mm");
            if (member(before.root, place) == member(after.root, place)) continue;
            const auto outline_of = [plan](const Project& project, std::size_t index) {
                const BodyPlan& body = project.cars.at(index).body;
                return plan ? body.plan : body.profile;
            };
            if (runs_round_once(outline_of(read, car)) ||
                !runs_round_once(outline_of(read_project(before), car)))
                continue;
            throw Problem(Exit::could_not, place, Core::tr("the outline would touch or cross itself"),
                          Core::tr("keep its points in their order around the wood"));
        }
}

} // namespace

Edit make_edit(const Document& document, std::string name, const std::function<void(Json& root)>& change) {
    Edit edit{document, std::move(name), {}};
    change(edit.document.root);
    // What cannot be written and read again (a text that is not UTF-8, a missing format, ...) is no project.
    const Project read = read_project(parse_document(to_text(edit.document)));
    keep_outlines_simple(document, edit.document, read);
    edit.keys = difference(document, edit.document);
    return edit;
}

Json file_number(double si, std::string_view key) {
    if (!std::isfinite(si))
        throw Problem(Exit::could_not, "-", Core::tr("a number that is not finite"),
                      Core::tr("give a finite number"));
    const Unit* unit = find_key_unit(key);
    const double value = std::round((unit != nullptr ? from_si(si, *unit) : si) * 1e6) / 1e6;
    constexpr double largest_whole = 1e15;
    if (value == std::floor(value) && std::abs(value) < largest_whole)
        return static_cast<std::int64_t>(value);
    return value;
}

Json file_point(const Vec2& si, std::string_view key) {
    return Json::array({file_number(si.x(), key), file_number(si.y(), key)});
}

Json file_point(const Vec3& si, std::string_view key) {
    return Json::array({file_number(si.x(), key), file_number(si.y(), key), file_number(si.z(), key)});
}

Json& car_at(Json& root, std::size_t car) {
    return element_of(list_in(root, "cars"), car, "/cars", "car");
}

std::string car_name(const Document& document, std::size_t car) {
    const auto cars = document.root.find("cars");
    const std::string otherwise = Core::tr("Car {n}", {{"n", std::to_string(car + 1)}});
    if (cars == document.root.end() || !cars->is_array() || car >= cars->size()) return otherwise;
    return text_in((*cars)[car], "name", otherwise);
}

Json& object_in(Json& parent, const std::string& key) {
    Json& member = parent[key];
    if (member.is_null()) member = Json::object();
    return member;
}

Json& list_in(Json& parent, const std::string& key) {
    Json& member = parent[key];
    if (member.is_null()) member = Json::array();
    return member;
}

Json& element_of(Json& list, std::size_t index, const std::string& where, const std::string& what) {
    if (!list.is_array() || index >= list.size())
        throw Problem(Exit::could_not, where + "/" + std::to_string(index),
                      Core::tr("there is no such {what}", {{"what", what}}),
                      Core::tr("choose one that is there"));
    return list[index];
}

std::string text_in(const Json& parent, const std::string& key, const std::string& otherwise) {
    if (!parent.is_object()) return otherwise;
    const auto member = parent.find(key);
    return member != parent.end() && member->is_string() ? member->get<std::string>() : otherwise;
}

} // namespace rampwright

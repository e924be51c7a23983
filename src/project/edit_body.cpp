#include "project/edit_support.hpp"

#include <rampwright/body/outline.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/materials/materials.hpp>
#include <rampwright/materials/starting_shapes.hpp>
#include <rampwright/project/group_edits.hpp>

#include <algorithm>

namespace rampwright {

namespace {

const char* outline_key(bool plan) {
    return plan ? "plan_mm" : "profile_mm";
}
std::string outline_place(std::size_t car, bool plan) {
    return "/cars/" + std::to_string(car) + "/body/" + outline_key(plan);
}

/// The outline as a list of points; where the car leaves it to the block, its rectangle is written out.
Json& outline_at(const Document& document, Json& root, std::size_t car, bool plan) {
    Json& body = object_in(car_at(root, car), "body");
    Json& outline = list_in(body, outline_key(plan));
    if (outline.is_array() && outline.empty()) {
        const BodyPlan read = read_project(document).cars.at(car).body;
        for (const PlanPoint& point : plan ? read.plan : read.profile)
            outline.push_back(file_point(point.at, outline_key(plan)));
    }
    return outline;
}

Json& point_at(Json& outline, std::size_t car, bool plan, std::size_t index) {
    return element_of(outline, index, outline_place(car, plan), "point");
}

Json make_point(const Vec2& at, bool plan, bool smooth) {
    Json point = file_point(at, outline_key(plan));
    if (smooth) point.push_back("smooth");
    return point;
}

bool is_smooth(const Json& point) {
    return point.is_array() && point.size() == 3 && point[2] == "smooth";
}

Json& bore_at(Json& root, std::size_t car, std::size_t cut) {
    Json& found = cut_at(root, car, cut);
    if (text_in(found, "kind", "") != "bore")
        throw Problem(Exit::could_not, "/cars/" + std::to_string(car) + "/body/cuts/" + std::to_string(cut),
                      Core::tr("a pocket has neither diameter nor point"), Core::tr("choose a bore"));
    return found;
}

std::string name_of_cut(const Document& document, std::size_t car, std::size_t cut) {
    Json root = document.root;
    return text_in(cut_at(root, car, cut), "name", Core::tr("cut {n}", {{"n", std::to_string(cut + 1)}}));
}

} // namespace

Json& cut_at(Json& root, std::size_t car, std::size_t cut) {
    return element_of(list_in(object_in(car_at(root, car), "body"), "cuts"), cut,
                      "/cars/" + std::to_string(car) + "/body/cuts", "cut");
}

std::vector<Json*> pieces_in(Json& root, std::size_t car, const std::string& cut) {
    std::vector<Json*> pieces;
    Json& owner = car_at(root, car);
    if (const auto ballast = owner.find("ballast"); ballast != owner.end() && ballast->is_array())
        for (Json& piece : *ballast)
            if (text_in(piece, "in", "") == cut) pieces.push_back(&piece);
    return pieces;
}

Edit move_outline_point(const Document& document, std::size_t car, bool plan, std::size_t index,
                        const Vec2& to) {
    return make_edit(document, plan ? Core::tr("Move plan point") : Core::tr("Move profile point"),
                     [&](Json& root) {
                         Json& point = point_at(outline_at(document, root, car, plan), car, plan, index);
                         point = make_point(to, plan, is_smooth(point));
                     });
}

Edit insert_outline_point(const Document& document, std::size_t car, bool plan, std::size_t before,
                          const Vec2& at, bool smooth) {
    return make_edit(document, plan ? Core::tr("Add plan point") : Core::tr("Add profile point"),
                     [&](Json& root) {
                         Json& outline = outline_at(document, root, car, plan);
                         if (!outline.is_array() || before > outline.size())
                             point_at(outline, car, plan, before);
                         outline.insert(outline.begin() + static_cast<std::ptrdiff_t>(before),
                                        make_point(at, plan, smooth));
                     });
}

Edit remove_outline_point(const Document& document, std::size_t car, bool plan, std::size_t index) {
    return make_edit(document, plan ? Core::tr("Remove plan point") : Core::tr("Remove profile point"),
                     [&](Json& root) {
                         Json& outline = outline_at(document, root, car, plan);
                         point_at(outline, car, plan, index);
                         outline.erase(index);
                     });
}

Edit set_outline_smooth(const Document& document, std::size_t car, bool plan, std::size_t index,
                        bool smooth) {
    const std::string name =
        plan ? (smooth ? Core::tr("Make plan point smooth") : Core::tr("Make plan point a corner"))
             : (smooth ? Core::tr("Make profile point smooth") : Core::tr("Make profile point a corner"));
    return make_edit(document, name, [&](Json& root) {
        Json& point = point_at(outline_at(document, root, car, plan), car, plan, index);
        if (is_smooth(point) == smooth) return;
        if (smooth)
            point = Json::array({point.at(0), point.at(1), "smooth"});
        else
            point.erase(2);
    });
}

Edit set_outline(const Document& document, std::size_t car, bool plan, const std::vector<PlanPoint>& points) {
    Outline outline;
    for (const PlanPoint& point : points)
        outline.push_back({point.at, point.smooth});
    check_outline(outline, outline_place(car, plan));
    return make_edit(document, plan ? Core::tr("Take in plan outline") : Core::tr("Take in profile outline"),
                     [&](Json& root) {
                         Json rows = Json::array();
                         for (const PlanPoint& point : points)
                             rows.push_back(make_point(point.at, plan, point.smooth));
                         object_in(car_at(root, car), "body")[outline_key(plan)] = std::move(rows);
                     });
}

Edit set_wood(const Document& document, std::size_t car, const std::string& wood) {
    const Wood* known = find_wood(wood);
    if (known == nullptr)
        throw Problem(Exit::could_not, "/cars/" + std::to_string(car) + "/body/wood",
                      Core::tr("the wood \"{what}\" is not in the table", {{"what", wood}}),
                      Core::tr("choose another"));
    return make_edit(document, Core::tr("Choose wood") + ": " + known->name, [&](Json& root) {
        Json& body = object_in(car_at(root, car), "body");
        body["wood"] = known->id;
        body.erase("density_kg_m3");
    });
}

Edit start_from_shape(const Document& document, std::size_t car, const StartingShape& shape) {
    const Project project = read_project(document);
    return make_edit(document, Core::tr("Start from shape") + ": " + shape.name, [&](Json& root) {
        Json& body = object_in(car_at(root, car), "body");
        const Vec3& block = project.cars.at(car).body.block;
        for (const bool plan : {false, true}) {
            Json outline = Json::array();
            for (const PlanPoint& point : plan ? shape.plan : shape.profile)
                outline.push_back(
                    make_point({point.at.x() * block.x(), point.at.y() * (plan ? block.y() : block.z())},
                               plan, point.smooth));
            body[outline_key(plan)] = std::move(outline);
        }
    });
}

std::string free_cut_name(const CarPlan& plan, std::string_view base) {
    for (int number = 1;; ++number) {
        std::string name = std::string(base) + " " + std::to_string(number);
        if (!find_cut(plan.body.cuts, name)) return name;
    }
}

Edit add_cut(const Document& document, std::size_t car, const CutPlan& cut) {
    Json row{{"name", cut.name},
             {"kind", cut.is_bore ? "bore" : "pocket"},
             {"from_mm", file_point(cut.from, "from_mm")},
             {"to_mm", file_point(cut.to, "to_mm")}};
    if (cut.is_bore) {
        row["diameter_mm"] = file_number(cut.diameter, "diameter_mm");
        if (cut.pointed) row["end"] = "point";
    }
    return add_cut(document, car, row);
}

Edit duplicate_cut(const Document& document, std::size_t car, std::size_t cut, const Vec3& by) {
    return duplicate_group(document, car, {{}, {cut}}, by);
}

Edit set_cut_diameter(const Document& document, std::size_t car, std::size_t cut, double diameter) {
    return make_edit(
        document, Core::tr("Set diameter") + ": " + name_of_cut(document, car, cut),
        [&](Json& root) { bore_at(root, car, cut)["diameter_mm"] = file_number(diameter, "diameter_mm"); });
}

Edit set_cut_pointed(const Document& document, std::size_t car, std::size_t cut, bool pointed) {
    const std::string name = name_of_cut(document, car, cut);
    return make_edit(document, (pointed ? Core::tr("Drill's point") : Core::tr("Flat end")) + ": " + name,
                     [&](Json& root) { bore_at(root, car, cut)["end"] = pointed ? "point" : "flat"; });
}

Edit add_cut(const Document& document, std::size_t car, const Json& cut) {
    return make_edit(document, Core::tr("Add cut") + ": " + text_in(cut, "name", "cut"), [&](Json& root) {
        list_in(object_in(car_at(root, car), "body"), "cuts").push_back(cut);
    });
}

Edit move_cut(const Document& document, std::size_t car, std::size_t cut, const Vec3& from, const Vec3& to) {
    return make_edit(document, Core::tr("Move cut") + ": " + name_of_cut(document, car, cut),
                     [&](Json& root) {
                         Json& moved = cut_at(root, car, cut);
                         moved["from_mm"] = file_point(from, "from_mm");
                         moved["to_mm"] = file_point(to, "to_mm");
                     });
}

Edit remove_cut(const Document& document, std::size_t car, std::size_t cut) {
    const std::string name = name_of_cut(document, car, cut);
    return make_edit(document, Core::tr("Remove cut") + ": " + name, [&](Json& root) {
        cut_at(root, car, cut);
        car_at(root, car)["body"]["cuts"].erase(cut);
        // Pieces that lay in it stay where they are; putty cannot, and reading says so.
        for (Json* piece : pieces_in(root, car, name))
            piece->erase("in");
    });
}

Edit rename_cut(const Document& document, std::size_t car, std::size_t cut, const std::string& name) {
    const std::string old_name = name_of_cut(document, car, cut);
    return make_edit(document, Core::tr("Rename cut") + ": " + name, [&](Json& root) {
        cut_at(root, car, cut)["name"] = name;
        for (Json* piece : pieces_in(root, car, old_name))
            (*piece)["in"] = name;
    });
}

} // namespace rampwright

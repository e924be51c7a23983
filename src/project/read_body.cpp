#include "project/read_parts.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/materials/materials.hpp>
#include <rampwright/materials/moisture.hpp>

#include <algorithm>

namespace rampwright {

namespace {

constexpr Limits coordinate = from_to(-1000, 1000);

/// A usual block of our own choosing, from memory.
constexpr double usual_block_mm[3] = {178, 44, 32};
constexpr std::string_view usual_wood = "eastern white pine";

Vec3 read_block(const Node& block) {
    if (block.present()) return block.point3(above(0, 1000));
    Vec3 size;
    for (int i = 0; i < 3; ++i)
        size[i] = block.element(i).number(above(0, 1000), usual_length(usual_block_mm[i]));
    return size;
}

PlanPoint read_point(const Node& row) {
    const std::vector<Node> parts = row.rows();
    if (parts.size() != 2 && parts.size() != 3)
        row.refuse(Core::tr("a point of {what} parts", {{"what", std::to_string(parts.size())}}),
                   Core::tr("give [a, b] or [a, b, \"smooth\"]"));
    PlanPoint point;
    point.at = {parts[0].number(coordinate), parts[1].number(coordinate)};
    if (parts.size() == 3) point.smooth = parts[2].word<bool>({{"smooth", true}, {"corner", false}});
    return point;
}

/// @param otherwise the block's rectangle: low corner, high corner.
std::vector<PlanPoint> read_outline(const Node& outline, const Vec2& low, const Vec2& high) {
    std::vector<PlanPoint> points;
    if (!outline.present()) {
        outline.assume("the block's rectangle");
        return {{low}, {{high.x(), low.y()}}, {high}, {{low.x(), high.y()}}};
    }
    for (const Node& row : outline.rows())
        points.push_back(read_point(row));
    if (points.size() < 3)
        outline.refuse("an outline of " + std::to_string(points.size()) +
                           (points.size() == 1 ? " point" : " points"),
                       Core::tr("give at least 3, or leave the outline out for the block's rectangle"));
    return points;
}

CutPlan read_cut(const Node& row, std::size_t index) {
    CutPlan cut;
    cut.name = row["name"].text("cut " + std::to_string(index + 1));
    cut.is_bore = row["kind"].word<bool>({{"pocket", false}, {"bore", true}});
    const Node from = row["from_mm"];
    const Node to = row["to_mm"];
    cut.from = from.point3(coordinate);
    cut.to = to.point3(coordinate);
    if (cut.is_bore) {
        if (cut.from == cut.to)
            to.refuse(Core::tr("a bore that ends where it starts"), Core::tr("give two different centres"));
        cut.diameter = row["diameter_mm"].number(above(0, 200));
        cut.pointed = row["end"].word<bool>({{"flat", false}, {"point", true}}, false);
    } else if ((cut.from.array() == cut.to.array()).any()) {
        to.refuse(Core::tr("a pocket without length, width or depth"),
                  Core::tr("give two opposite corners that differ in x, in y and in z"));
    }
    return cut;
}

std::vector<CutPlan> read_cuts(const Node& cuts) {
    std::vector<CutPlan> list;
    for (const Node& row : cuts.rows()) {
        CutPlan cut = read_cut(row, list.size());
        if (std::any_of(list.begin(), list.end(), [&](const CutPlan& c) { return c.name == cut.name; }))
            row["name"].refuse(
                Core::tr("two cuts of this car have the name \"{what}\"", {{"what", cut.name}}),
                Core::tr("give each cut a name of its own"));
        list.push_back(std::move(cut));
    }
    return list;
}

/// What the table's densities are at.
constexpr double table_moisture = 0.12;

/// A weighed block wins over a stated density, and that over the wood's.
void read_density(const Node& body, BodyPlan& plan) {
    const Node density = body["density_kg_m3"];
    const std::optional<double> stated = density.maybe_number(from_to(50, 2000));
    plan.block_mass = body["block_mass_g"].maybe_number(above(0, 5000));
    const Node moisture = body["moisture_pct"];
    const Limits wet = from_to(0, 100);
    if (plan.block_mass || stated) moisture.maybe_number(wet); // the measured one has its water in it
    if (plan.block_mass) {
        plan.density = *plan.block_mass / plan.block.prod();
        plan.density_sigma = 0;
    } else if (stated) {
        plan.density = *stated;
        plan.density_sigma = 0;
    } else {
        const Wood* known = find_wood(plan.wood);
        if (known == nullptr)
            body["wood"].refuse(Core::tr("the wood \"{what}\" is not in the table", {{"what", plan.wood}}),
                                Core::tr("give density_kg_m3 or block_mass_g, or one of {what}",
                                         {{"what", names_of(woods())}}));
        plan.density = known->density.value;
        plan.density_sigma = known->density.sigma;
        if (const double water = moisture.number(wet, {100 * table_moisture}); moisture.present()) {
            plan.density = density_at_moisture(known->density.value, table_moisture, water);
            plan.density_sigma *= plan.density / known->density.value;
        }
        density.assume(Default{plan.density, plan.density_sigma, known->status});
    }
}

} // namespace

BodyPlan read_body(const Node& body) {
    BodyPlan plan;
    plan.block = read_block(body["block_mm"]);
    const Node wood = body["wood"];
    const bool weighed = body["density_kg_m3"].present() || body["block_mass_g"].present();
    if (!wood.present() && !weighed) wood.assume(std::string(usual_wood));
    plan.wood = wood.text(weighed ? std::string() : std::string(usual_wood));
    read_density(body, plan);
    const Vec3& block = plan.block;
    plan.profile = read_outline(body["profile_mm"], {0, 0}, {block.x(), block.z()});
    plan.plan = read_outline(body["plan_mm"], {0, -block.y() / 2}, {block.x(), block.y() / 2});
    plan.edge_radius = body["edge_radius_mm"].number(from_to(0, 100), {0});
    plan.cuts = read_cuts(body["cuts"]);
    plan.finish = body["finish_g"].number(from_to(0, 100), {0});
    return plan;
}

} // namespace rampwright

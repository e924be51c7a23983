#include "project/group_support.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <algorithm>
#include <map>

namespace rampwright {

namespace {

constexpr double same_place = 1e-9; // m: far below what the file's numbers can tell apart on purpose

void make_sure(std::vector<std::size_t>& places, std::size_t count, const std::string& where,
               const std::string& what) {
    std::sort(places.begin(), places.end());
    places.erase(std::unique(places.begin(), places.end()), places.end());
    if (!places.empty() && places.back() >= count)
        throw Problem(Exit::could_not, where + "/" + std::to_string(places.back()), what,
                      Core::tr("choose one that is there"));
}

} // namespace

Group removable(const CarPlan& plan, const Group& group) {
    Group left;
    std::copy_if(group.pieces.begin(), group.pieces.end(), std::back_inserter(left.pieces),
                 [&](std::size_t piece) { return !plan.ballast.at(piece).fixed; });
    if (!is_done(plan, "drilled")) left.cuts = group.cuts;
    return left;
}

Group movable(const CarPlan& plan, const Group& group) {
    Group left = removable(plan, group);
    std::erase_if(left.pieces,
                  [&](std::size_t piece) { return plan.ballast.at(piece).shape == PieceShape::putty; });
    return left;
}

GroupIn find_group(const Document& document, std::size_t car, const Group& group) {
    GroupIn found{read_project(document), group};
    Json root = document.root;
    car_at(root, car);
    const std::string own = "/cars/" + std::to_string(car);
    const CarPlan& plan = found.plan(car);
    make_sure(found.group.pieces, plan.ballast.size(), own + "/ballast",
              Core::tr("there is no such ballast piece"));
    make_sure(found.group.cuts, plan.body.cuts.size(), own + "/body/cuts", Core::tr("there is no such cut"));
    return found;
}

void refuse_if_all_stay(std::size_t car, const Group& left) {
    if (left.size() == 0)
        throw Problem(Exit::could_not, "/cars/" + std::to_string(car),
                      Core::tr("all of it stays: it is locked, putty, or in wood that is drilled"),
                      Core::tr("unlock it, or choose something else"));
}

std::string words_of(const CarPlan& plan, const Group& group) {
    const auto pieces = [&] {
        const std::size_t count = group.pieces.size();
        return count == 1 ? Core::tr("a piece") : Core::tr("{n} pieces", {{"n", std::to_string(count)}});
    };
    const auto cuts = [&] {
        const std::size_t count = group.cuts.size();
        return count == 1 ? Core::tr("a cut") : Core::tr("{n} cuts", {{"n", std::to_string(count)}});
    };
    if (group.size() == 1)
        return group.cuts.empty() ? plan.ballast[group.pieces[0]].name : plan.body.cuts[group.cuts[0]].name;
    if (group.cuts.empty()) return pieces();
    if (group.pieces.empty()) return cuts();
    return Core::tr("{pieces} and {cuts}", {{"pieces", pieces()}, {"cuts", cuts()}});
}

bool is_same_hole(const CutPlan& a, const CutPlan& b) {
    const auto close = [](const Vec3& p, const Vec3& q) {
        return (p - q).cwiseAbs().maxCoeff() < same_place;
    };
    if (a.is_bore != b.is_bore) return false;
    if (a.is_bore)
        return close(a.from, b.from) && close(a.to, b.to) && a.pointed == b.pointed &&
               std::abs(a.diameter - b.diameter) < same_place;
    return close(a.from.cwiseMin(a.to), b.from.cwiseMin(b.to)) &&
           close(a.from.cwiseMax(a.to), b.from.cwiseMax(b.to));
}

void refuse_if_too_many(const Project& project, std::size_t car, const std::vector<std::string>& names) {
    std::map<std::string, int> wanted;
    for (const std::string& name : names)
        ++wanted[name];
    for (const auto& [name, count] : wanted)
        refuse_if_none_left(project, car, name, count);
}

} // namespace rampwright

#include "project/group_support.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <algorithm>
#include <set>

namespace rampwright {

namespace {

/// The same number the other way round, digit for digit: mirrored twice is as before.
void turn_sign(Json& number) {
    if (number.is_number_integer())
        number = -number.get<std::int64_t>();
    else if (number.is_number_float() && number.get<double>() != 0)
        number = -number.get<double>();
}

void flip_point(Json& row, const char* key) {
    if (const auto point = row.find(key); point != row.end() && point->is_array() && point->size() == 3)
        turn_sign((*point)[1]);
}

void flip_piece(Json& row) {
    flip_point(row, "at_mm");
    if (const auto turned = row.find("turned_deg"); turned != row.end()) turn_sign(*turned);
}

void flip_cut(Json& row) {
    flip_point(row, "from_mm");
    flip_point(row, "to_mm");
}

CutPlan mirrored(CutPlan cut) {
    cut.from.y() = -cut.from.y();
    cut.to.y() = -cut.to.y();
    return cut;
}

/// The cut that is this one's mirror image: itself where it lies across the centre line, the count of cuts
/// where the car has none.
std::size_t image_of(const CarPlan& plan, std::size_t cut) {
    const auto& cuts = plan.body.cuts;
    const CutPlan image = mirrored(cuts[cut]);
    if (is_same_hole(image, cuts[cut])) return cut;
    return static_cast<std::size_t>(
        std::find_if(cuts.begin(), cuts.end(),
                     [&](const CutPlan& other) { return is_same_hole(image, other); }) -
        cuts.begin());
}

/// What a mirroring takes: the cuts to one side that have no image yet, and the pieces.
struct Reach {
    std::set<std::size_t> cuts, pieces;
};

void add_pieces_in(const CarPlan& plan, std::size_t cut, std::set<std::size_t>& pieces) {
    for (std::size_t i = 0; i < plan.ballast.size(); ++i)
        if (plan.ballast[i].in == plan.body.cuts[cut].name) pieces.insert(i);
}

void refuse_in_drilled_wood(const CarPlan& plan, std::size_t car, const std::set<std::size_t>& cuts) {
    if (!cuts.empty() && is_done(plan, "drilled"))
        throw Problem(Exit::could_not,
                      "/cars/" + std::to_string(car) + "/body/cuts/" + std::to_string(*cuts.begin()),
                      Core::tr("the wood is drilled, and \"{cut}\" lies to one side of the centre line",
                               {{"cut", plan.body.cuts[*cuts.begin()].name}}),
                      Core::tr("take the piece out of it first, or choose another"));
}

Reach reach_of(const CarPlan& plan, std::size_t car, const Group& group) {
    Reach reach;
    const std::size_t none = plan.body.cuts.size();
    for (const std::size_t cut : group.cuts) {
        add_pieces_in(plan, cut, reach.pieces);
        if (image_of(plan, cut) == none) reach.cuts.insert(cut);
    }
    for (const std::size_t piece : group.pieces) {
        reach.pieces.insert(piece);
        const auto holder = find_cut(plan.body.cuts, plan.ballast[piece].in);
        if (holder && image_of(plan, *holder) == none) reach.cuts.insert(*holder);
    }
    refuse_in_drilled_wood(plan, car, reach.cuts);
    return reach;
}

/// The name of the cut that a mirrored piece lies in, where its own does not come along.
std::string holder_across(const CarPlan& plan, const BallastPlan& piece) {
    const auto holder = find_cut(plan.body.cuts, piece.in);
    return holder ? plan.body.cuts[image_of(plan, *holder)].name : piece.in;
}

} // namespace

Edit mirror_group(const Document& document, std::size_t car, const Group& group) {
    const GroupIn found = find_group(document, car, group);
    const CarPlan& plan = found.plan(car);
    Group chosen = found.group;
    std::erase_if(chosen.pieces, [&](std::size_t piece) { return plan.ballast[piece].fixed; });
    refuse_if_all_stay(car, chosen);
    Reach reach = reach_of(plan, car, chosen);
    for (const std::size_t cut : reach.cuts)
        add_pieces_in(plan, cut, reach.pieces); // they would fall out of it
    for (const std::size_t piece : reach.pieces)
        if (plan.ballast[piece].fixed)
            throw Problem(
                Exit::could_not, "/cars/" + std::to_string(car) + "/ballast/" + std::to_string(piece),
                Core::tr("\"{piece}\" lies in it and is locked", {{"piece", plan.ballast[piece].name}}),
                Core::tr("unlock it first"));
    return make_edit(document, Core::tr("Mirror {what}", {{"what", words_of(plan, chosen)}}),
                     [&](Json& root) {
                         for (const std::size_t piece : reach.pieces) {
                             const BallastPlan& read = plan.ballast[piece];
                             Json& row = piece_at(root, car, piece);
                             flip_piece(row);
                             const auto holder = find_cut(plan.body.cuts, read.in);
                             if (!holder || reach.cuts.count(*holder) > 0) continue;
                             if (const std::string in = holder_across(plan, read); in != read.in)
                                 row["in"] = in;
                         }
                         for (const std::size_t cut : reach.cuts)
                             flip_cut(cut_at(root, car, cut));
                     });
}

Edit mirror_copy(const Document& document, std::size_t car, const Group& group) {
    const GroupIn found = find_group(document, car, group);
    const CarPlan& plan = found.plan(car);
    Reach reach = reach_of(plan, car, found.group);
    std::erase_if(reach.pieces, [&](std::size_t piece) {
        const BallastPlan& read = plan.ballast[piece];
        const auto holder = find_cut(plan.body.cuts, read.in);
        const bool across = !holder || image_of(plan, *holder) == *holder;
        return across && (read.shape == PieceShape::putty || read.at.y() == 0);
    });
    if (reach.pieces.empty() && reach.cuts.empty())
        throw Problem(Exit::could_not, "/cars/" + std::to_string(car),
                      Core::tr("what is chosen is its own mirror image, or has one already"),
                      Core::tr("choose something to one side of the centre line"));
    std::vector<std::string> names;
    for (const std::size_t piece : reach.pieces)
        names.push_back(plan.ballast[piece].name);
    refuse_if_too_many(found.project, car, names);
    const Group copied{{reach.pieces.begin(), reach.pieces.end()}, {reach.cuts.begin(), reach.cuts.end()}};
    return make_edit(
        document, Core::tr("Mirror a copy of {what}", {{"what", words_of(plan, copied)}}), [&](Json& root) {
            CarPlan grown = plan;
            std::vector<std::string> new_names(plan.body.cuts.size());
            for (const std::size_t cut : reach.cuts) {
                Json copy = cut_at(root, car, cut);
                CutPlan read = mirrored(plan.body.cuts[cut]);
                new_names[cut] = read.name = free_cut_name(grown, read.is_bore ? "bore" : "pocket");
                grown.body.cuts.push_back(read);
                copy["name"] = read.name;
                flip_cut(copy);
                car_at(root, car)["body"]["cuts"].push_back(std::move(copy));
            }
            for (const std::size_t piece : reach.pieces) {
                Json copy = piece_at(root, car, piece);
                flip_piece(copy);
                copy.erase("fixed");
                const BallastPlan& read = plan.ballast[piece];
                if (const auto holder = find_cut(plan.body.cuts, read.in))
                    copy["in"] =
                        reach.cuts.count(*holder) > 0 ? new_names[*holder] : holder_across(plan, read);
                car_at(root, car)["ballast"].push_back(std::move(copy));
            }
        });
}

} // namespace rampwright

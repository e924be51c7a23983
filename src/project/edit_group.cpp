#include "project/group_support.hpp"

#include <rampwright/core/say.hpp>

namespace rampwright {

namespace {

void put_cut(Json& row, const Vec3& from, const Vec3& to) {
    row["from_mm"] = file_point(from, "from_mm");
    row["to_mm"] = file_point(to, "to_mm");
}

} // namespace

Edit move_group(const Document& document, std::size_t car, const std::vector<PieceMove>& pieces,
                const std::vector<std::size_t>& cuts, const Vec3& by) {
    Group all{{}, cuts};
    for (const PieceMove& move : pieces)
        all.pieces.push_back(move.piece);
    const GroupIn found = find_group(document, car, all);
    const CarPlan& plan = found.plan(car);
    const Group moved = movable(plan, found.group);
    refuse_if_all_stay(car, moved);
    return make_edit(document, Core::tr("Move {what}", {{"what", words_of(plan, moved)}}), [&](Json& root) {
        for (const PieceMove& move : pieces) {
            if (movable(plan, {{move.piece}, {}}).size() == 0) continue;
            Json& row = piece_at(root, car, move.piece);
            row["at_mm"] = file_point(move.at, "at_mm");
            if (!move.in.empty())
                row["in"] = move.in;
            else
                row.erase("in");
        }
        for (const std::size_t cut : moved.cuts)
            put_cut(cut_at(root, car, cut), plan.body.cuts[cut].from + by, plan.body.cuts[cut].to + by);
    });
}

Edit remove_group(const Document& document, std::size_t car, const Group& group) {
    const GroupIn found = find_group(document, car, group);
    const CarPlan& plan = found.plan(car);
    const Group gone = removable(plan, found.group);
    refuse_if_all_stay(car, gone);
    return make_edit(document, Core::tr("Remove {what}", {{"what", words_of(plan, gone)}}), [&](Json& root) {
        // From the last on: places before it keep their numbers.
        for (auto piece = gone.pieces.rbegin(); piece != gone.pieces.rend(); ++piece)
            car_at(root, car)["ballast"].erase(*piece);
        for (auto cut = gone.cuts.rbegin(); cut != gone.cuts.rend(); ++cut) {
            car_at(root, car)["body"]["cuts"].erase(*cut);
            for (Json* piece : pieces_in(root, car, plan.body.cuts[*cut].name))
                piece->erase("in");
        }
    });
}

Edit duplicate_group(const Document& document, std::size_t car, const Group& group, const Vec3& by) {
    const GroupIn found = find_group(document, car, group);
    const CarPlan& plan = found.plan(car);
    Group copied = found.group;
    if (is_done(plan, "drilled")) copied.cuts.clear();
    refuse_if_all_stay(car, copied);
    std::vector<std::string> names;
    for (const std::size_t piece : copied.pieces)
        names.push_back(plan.ballast[piece].name);
    refuse_if_too_many(found.project, car, names);
    return make_edit(document, Core::tr("Duplicate {what}", {{"what", words_of(plan, copied)}}),
                     [&](Json& root) {
                         for (const std::size_t piece : copied.pieces) {
                             Json copy = piece_at(root, car, piece);
                             const BallastPlan& read = plan.ballast[piece];
                             if (read.shape != PieceShape::putty)
                                 copy["at_mm"] = file_point(Vec3(read.at + by), "at_mm");
                             copy.erase("fixed");
                             car_at(root, car)["ballast"].push_back(std::move(copy));
                         }
                         CarPlan grown = plan;
                         for (const std::size_t cut : copied.cuts) {
                             Json copy = cut_at(root, car, cut);
                             CutPlan read = plan.body.cuts[cut];
                             read.name = free_cut_name(grown, read.is_bore ? "bore" : "pocket");
                             grown.body.cuts.push_back(read);
                             copy["name"] = read.name;
                             put_cut(copy, read.from + by, read.to + by);
                             car_at(root, car)["body"]["cuts"].push_back(std::move(copy));
                         }
                     });
}

Edit lock_group(const Document& document, std::size_t car, const std::vector<std::size_t>& pieces,
                bool locked) {
    const GroupIn found = find_group(document, car, {pieces, {}});
    return make_edit(document,
                     locked ? Core::tr("Lock {what}", {{"what", words_of(found.plan(car), found.group)}})
                            : Core::tr("Unlock {what}", {{"what", words_of(found.plan(car), found.group)}}),
                     [&](Json& root) {
                         for (const std::size_t piece : found.group.pieces)
                             if (found.plan(car).ballast[piece].fixed != locked)
                                 piece_at(root, car, piece)["fixed"] = locked;
                     });
}

} // namespace rampwright

#include "project/group_support.hpp"
#include "project/parse.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <algorithm>
#include <array>
#include <map>

namespace rampwright {

namespace {

constexpr const char* pieces_format = "rampwright-pieces";
constexpr int pieces_version = 1;
constexpr std::size_t largest_text = 4u << 20, most_rows = 1000;

/// The group's three lists: what was chosen, and the cuts that only hold it.
constexpr std::array list_names{"pieces", "cuts", "holders"};

[[noreturn]] void not_ours(const std::string& what) {
    throw Problem(Exit::not_ours, "-", what, Core::tr("copy pieces or cuts in Rampwright first"));
}

const Json& rows(const Json& pieces, const char* list) {
    static const Json none = Json::array();
    const auto found = pieces.find(list);
    return found == pieces.end() ? none : *found;
}

/// What the rows read as, in a car that has nothing else in it.
struct Copied {
    std::vector<BallastPlan> pieces;
    std::vector<CutPlan> cuts; ///< the chosen ones, then the holders
    std::size_t chosen_cuts = 0;
};

Copied read_copied(const Document& document, std::size_t car, const Json& pieces) {
    Document probe = document;
    Json cuts = rows(pieces, "cuts");
    const std::size_t chosen = cuts.size();
    for (const Json& holder : rows(pieces, "holders"))
        cuts.push_back(holder);
    Json& owner = car_at(probe.root, car);
    object_in(owner, "body")["cuts"] = std::move(cuts);
    owner["ballast"] = rows(pieces, "pieces");
    try {
        const CarPlan plan = read_project(probe).cars.at(car);
        return {plan.ballast, plan.body.cuts, chosen};
    } catch (const Problem& problem) {
        throw Problem(Exit::not_ours, "-",
                      Core::tr("what was copied does not read: {problem}", {{"problem", problem.wrong()}}),
                      problem.remedy());
    }
}

bool lies_on_its_twin(const CarPlan& plan, const Copied& copied, const Vec3& away) {
    constexpr double same_place = 1e-6; // m: the file's last digit
    const auto& ballast = plan.ballast;
    const auto& cuts = plan.body.cuts;
    const bool piece = std::any_of(copied.pieces.begin(), copied.pieces.end(), [&](const BallastPlan& each) {
        return each.shape != PieceShape::putty &&
               std::any_of(ballast.begin(), ballast.end(), [&](const BallastPlan& other) {
                   return other.name == each.name && other.shape != PieceShape::putty &&
                          (other.at - each.at - away).norm() < same_place;
               });
    });
    const auto last = copied.cuts.begin() + static_cast<std::ptrdiff_t>(copied.chosen_cuts);
    return piece || std::any_of(copied.cuts.begin(), last, [&](CutPlan each) {
               each.from += away;
               each.to += away;
               return std::any_of(cuts.begin(), cuts.end(),
                                  [&](const CutPlan& other) { return is_same_hole(each, other); });
           });
}

Vec3 way_aside(const CarPlan& plan, const Copied& copied, const Vec3& aside) {
    Vec3 away = Vec3::Zero();
    if (aside.norm() > 0)
        while (lies_on_its_twin(plan, copied, away))
            away += aside;
    return away;
}

/// What each copied cut is called in the car: that of the hole just like it, or a free name.
struct Naming {
    std::map<std::string, std::string> names;
    std::vector<std::size_t> added; ///< by their places in Copied::cuts
};

Naming name_cuts(const CarPlan& plan, const Copied& copied) {
    Naming naming;
    CarPlan grown = plan;
    const auto& there = plan.body.cuts;
    for (std::size_t i = 0; i < copied.cuts.size(); ++i) {
        CutPlan cut = copied.cuts[i];
        const std::string old_name = cut.name;
        const auto like = std::find_if(there.begin(), there.end(),
                                       [&](const CutPlan& other) { return is_same_hole(cut, other); });
        if (i >= copied.chosen_cuts && like != there.end()) {
            naming.names[old_name] = like->name;
            continue;
        }
        if (find_cut(grown.body.cuts, cut.name))
            cut.name = free_cut_name(grown, cut.is_bore ? "bore" : "pocket");
        naming.names[old_name] = cut.name;
        naming.added.push_back(i);
        grown.body.cuts.push_back(cut);
    }
    return naming;
}

} // namespace

Json copy_group(const Document& document, std::size_t car, const Group& group) {
    const GroupIn found = find_group(document, car, group);
    const CarPlan& plan = found.plan(car);
    Json root = document.root;
    Json copied{{"format", pieces_format},
                {"version", pieces_version},
                {"pieces", Json::array()},
                {"cuts", Json::array()},
                {"holders", Json::array()}};
    std::vector<std::size_t> held_by = found.group.cuts;
    for (const std::size_t cut : found.group.cuts)
        copied["cuts"].push_back(cut_at(root, car, cut));
    for (const std::size_t piece : found.group.pieces) {
        copied["pieces"].push_back(piece_at(root, car, piece));
        const auto holder = find_cut(plan.body.cuts, plan.ballast[piece].in);
        if (!holder || std::find(held_by.begin(), held_by.end(), *holder) != held_by.end()) continue;
        held_by.push_back(*holder);
        copied["holders"].push_back(cut_at(root, car, *holder));
    }
    return copied;
}

Json read_pieces(std::string_view text) {
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
        not_ours(Core::tr("the clipboard is empty"));
    if (text.size() > largest_text) not_ours(Core::tr("the clipboard holds far more than pieces of a car"));
    Json pieces;
    try {
        pieces = parse_tree(text);
    } catch (const Problem&) {
        not_ours(Core::tr("the clipboard holds no pieces of a car"));
    }
    const auto format = pieces.is_object() ? pieces.find("format") : pieces.end();
    if (!pieces.is_object() || format == pieces.end() || *format != pieces_format)
        not_ours(Core::tr("the clipboard holds no pieces of a car"));
    const auto version = pieces.find("version");
    if (version == pieces.end() || *version != pieces_version)
        throw Problem(Exit::not_ours, "/version",
                      Core::tr("the pieces were copied by another version of Rampwright"),
                      Core::tr("open the file they come from here, and copy them again"));
    std::size_t count = 0;
    for (const char* list : list_names) {
        const Json& all = rows(pieces, list);
        count += all.size();
        if (!all.is_array() || count > most_rows ||
            std::any_of(all.begin(), all.end(), [](const Json& row) { return !row.is_object(); }))
            not_ours(Core::tr("the clipboard's pieces are damaged"));
    }
    if (rows(pieces, "pieces").empty() && rows(pieces, "cuts").empty())
        not_ours(Core::tr("the clipboard holds no pieces of a car"));
    return pieces;
}

Edit paste_group(const Document& document, std::size_t car, const Json& pieces, const Vec3& aside) {
    const GroupIn found = find_group(document, car, {});
    const CarPlan& plan = found.plan(car);
    const Copied copied = read_copied(document, car, pieces);
    std::vector<std::string> wanted;
    for (const BallastPlan& piece : copied.pieces)
        wanted.push_back(piece.name);
    refuse_if_too_many(found.project, car, wanted);
    const Naming naming = name_cuts(plan, copied);
    if (!naming.added.empty() && is_done(plan, "drilled"))
        throw Problem(Exit::could_not, "/cars/" + std::to_string(car) + "/body/cuts",
                      Core::tr("the wood of this car is drilled, and it has no \"{cut}\" in that place",
                               {{"cut", copied.cuts[naming.added.front()].name}}),
                      Core::tr("paste into a car that is not drilled yet"));
    const Vec3 away = way_aside(plan, copied, aside);
    CarPlan pasted;
    pasted.ballast = copied.pieces;
    pasted.body.cuts = copied.cuts;
    Group all;
    for (std::size_t i = 0; i < copied.pieces.size(); ++i)
        all.pieces.push_back(i);
    for (std::size_t i = 0; i < copied.chosen_cuts; ++i)
        all.cuts.push_back(i);
    return make_edit(document, Core::tr("Paste {what}", {{"what", words_of(pasted, all)}}), [&](Json& root) {
        for (const std::size_t i : naming.added) {
            const bool chosen = i < copied.chosen_cuts;
            Json row = chosen ? rows(pieces, "cuts")[i] : rows(pieces, "holders")[i - copied.chosen_cuts];
            row["name"] = naming.names.at(copied.cuts[i].name);
            if (chosen && away != Vec3::Zero()) {
                row["from_mm"] = file_point(Vec3(copied.cuts[i].from + away), "from_mm");
                row["to_mm"] = file_point(Vec3(copied.cuts[i].to + away), "to_mm");
            }
            list_in(object_in(car_at(root, car), "body"), "cuts").push_back(std::move(row));
        }
        for (std::size_t i = 0; i < copied.pieces.size(); ++i) {
            const BallastPlan& read = copied.pieces[i];
            Json row = rows(pieces, "pieces")[i];
            row.erase("fixed");
            if (!read.in.empty()) row["in"] = naming.names.at(read.in);
            if (away != Vec3::Zero() && read.shape != PieceShape::putty)
                row["at_mm"] = file_point(Vec3(read.at + away), "at_mm");
            list_in(car_at(root, car), "ballast").push_back(std::move(row));
        }
    });
}

} // namespace rampwright

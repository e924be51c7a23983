#include "sheet/cautions.hpp"
#include "sheet/cut_map.hpp"
#include "sheet/fitting.hpp"
#include "sheet/table.hpp"
#include "sheet/views.hpp"

#include <algorithm>
#include <limits>

namespace rampwright::ui::paper {
namespace {

constexpr TextStyle map_note{8, false};

QString face_word(Face face) {
    switch (face) {
    case Face::top:
        return Words::tr("top");
    case Face::bottom:
        return Words::tr("bottom");
    case Face::right:
        return Words::tr("right side");
    case Face::left:
        return Words::tr("left side");
    case Face::tail:
        return Words::tr("tail end");
    case Face::nose:
        break;
    }
    return Words::tr("nose end");
}

/// The axis that a bore runs along, or 2 for a pocket, which is read from above.
int depth_axis(const CutPlace& place) {
    if (!place.opens) return 2;
    return *place.opens == Face::top || *place.opens == Face::bottom   ? 2
           : *place.opens == Face::right || *place.opens == Face::left ? 1
                                                                       : 0;
}

/// "51.0 to 79.0", or the centre line of a bore that runs along another axis.
QString range_words(const Words& words, const CutPlace& place, int axis, double zero) {
    if (place.cut->is_bore && !place.slanted && axis != depth_axis(place))
        return Words::tr("middle at %1").arg(words.bare_length(place.cut->from[axis] - zero));
    return Words::tr("%1 to %2")
        .arg(words.bare_length(place.low[axis] - zero), words.bare_length(place.high[axis] - zero));
}

QString depth_words(const Words& words, const CutPlace& place) {
    if (!place.opens) return Words::tr("closed all round: no tool reaches it from outside");
    QString text;
    if (place.through) {
        text =
            Words::tr("right through, from the %1 (%2 %3)")
                .arg(face_word(*place.opens), words.bare_length(place.greatest_depth), words.length_unit());
    } else {
        const QString least = words.bare_length(place.least_depth),
                      most = words.bare_length(place.greatest_depth);
        text = (least == most ? Words::tr("%1 deep from the sawn %3").arg(most)
                              : Words::tr("%1 to %2 deep from the sawn %3").arg(least, most))
                   .arg(face_word(*place.opens));
        const QString block = words.bare_length(place.depth_from_block);
        if (block != most) text += Words::tr("; %1 from the block's own face").arg(block);
        text += Words::tr("; %1 %2 of wood stays beyond")
                    .arg(words.bare_length(place.left_standing), words.length_unit());
    }
    if (place.slanted) text += Words::tr("; slanted: the figures are those of the box around it");
    if (place.point > 0)
        text += Words::tr("; the drill's point goes %1 deeper").arg(words.bare_length(place.point));
    return text;
}

QString tool_words(const Job& job, const CutPlace& place) {
    const auto& bits = job.project.tools.drill_bits;
    if (place.cut->is_bore) {
        const QString bit =
            Words::tr("%1 %2 bit").arg(job.words.bare_length(place.cut->diameter), job.words.length_unit());
        const bool have = bits.empty() || std::any_of(bits.begin(), bits.end(), [&](double each) {
                              return std::abs(each - place.cut->diameter) < 1e-6;
                          });
        return have ? bit : Words::tr("%1: not among your bits").arg(bit);
    }
    Vec3 size = place.high - place.low;
    size[depth_axis(place)] = std::numeric_limits<double>::infinity();
    const double least = size.minCoeff();
    double widest = 0;
    for (const double bit : bits)
        if (bit <= least) widest = std::max(widest, bit);
    return widest > 0 ? Words::tr("holes with the %1 %2 bit, stop set; then a chisel")
                            .arg(job.words.bare_length(widest), job.words.length_unit())
                      : Words::tr("holes with a stop set, then a chisel");
}

void put_cut_table(Flow& flow, const Job& job, const std::vector<CutPlace>& places) {
    const Words& words = job.words;
    const QString unit = words.length_unit();
    const double right = -job.plan.body.block.y() / 2;
    const double wide = words.units == UnitSystem::metric ? 23 : 28;
    Table table;
    table.columns = {{Words::tr("No."), 9},
                     {Words::tr("Cut"), -1.5},
                     {Words::tr("From the tail, %1").arg(unit), wide},
                     {Words::tr("From the right side, %1").arg(unit), wide},
                     {Words::tr("From the bottom, %1").arg(unit), wide},
                     {Words::tr("Depth, %1").arg(unit), -2.6},
                     {Words::tr("With"), -1.7}};
    for (std::size_t i = 0; i < places.size(); ++i) {
        const CutPlace& place = places[i];
        table.rows.push_back(
            {QString::number(i + 1),
             place.cut->is_bore ? Words::tr("%1 (bore ⌀ %2)")
                                      .arg(from_utf8(place.cut->name), words.bare_length(place.cut->diameter))
                                : Words::tr("%1 (pocket)").arg(from_utf8(place.cut->name)),
             range_words(words, place, 0, 0), range_words(words, place, 1, right),
             range_words(words, place, 2, 0), depth_words(words, place), tool_words(job, place)});
    }
    const AxlePlan& axles = job.plan.axles;
    for (const bool front : {false, true}) {
        const double x = front ? axles.front_x : axles.rear_x, z = front ? axles.front_z : axles.rear_z;
        const QString how =
            Holes::slots == axles.holes ? Words::tr("saw slot from the bottom up to it")
            : axles.holes == Holes::jig
                ? Words::tr("%1 %2 bit in a jig").arg(words.bare_length(axles.hole_diameter), unit)
                : Words::tr("%1 %2 bit in a drill press").arg(words.bare_length(axles.hole_diameter), unit);
        table.rows.push_back({front ? QStringLiteral("F") : QStringLiteral("R"),
                              front ? Words::tr("front axle hole") : Words::tr("rear axle hole"),
                              Words::tr("middle at %1").arg(words.bare_length(x)), Words::tr("right across"),
                              Words::tr("middle at %1").arg(words.bare_length(z)),
                              Words::tr("from both sides, or right through"), how});
    }
    put_table(flow, table);
}

/// A weight's middle; putty's follows from its cut.
Vec3 middle_of(const Job& job, std::size_t piece) {
    const std::string key = job.model.key + "/ballast/" + std::to_string(piece);
    for (const Part& part : job.model.parts)
        if (part.key == key) return part.properties.centre;
    return job.plan.ballast[piece].at;
}

/// Distances without repeats, so that a place is named once.
class Places {
public:
    Places(Callouts& callouts, const Words& words) : callouts_(callouts), words_(words) {}
    void add(double value, QPointF anchor) {
        const QString text = words_.bare_length(value);
        if (seen_.contains(text)) return;
        seen_ << text;
        callouts_.add(text, anchor);
    }

private:
    Callouts& callouts_;
    const Words& words_;
    QStringList seen_;
};

void put_cut_map_at(Flow& flow, const Job& job, double size) {
    const std::vector<CutPlace> places = find_cut_places(job.plan, job.shape);
    flow.start_page(Words::tr("Drill and pocket map"));
    flow.paragraph(
        Words::tr("Every distance is from an outer face of the block as it comes from the yard: the tail "
                  "end, the right side, the bottom. Mark with a ruler before those faces are sawn "
                  "away. Numbers on the drawing are %1.")
            .arg(job.words.length_unit()));
    TwoViews views;
    views.side_strip = 18;
    views.size = size;
    views.block = true;
    views.say = [&](const Placement& placed, Callouts& above, Callouts& below, Callouts& right) {
        Places along(below, job.words), across(right, job.words);
        const double right_face = -job.plan.body.block.y() / 2;
        const bool top = placed.view == View::top;
        for (std::size_t i = 0; i < places.size(); ++i) {
            const CutPlace& place = places[i];
            const Vec3 middle = (place.low + place.high) / 2;
            above.add(QString::number(i + 1), placed.at(middle), true);
            const bool centre_only = place.cut->is_bore && !place.slanted;
            const auto both = [&](int axis, auto&& name) {
                if (centre_only && axis != depth_axis(place)) {
                    name(place.cut->from[axis]);
                } else {
                    name(place.low[axis]);
                    name(place.high[axis]);
                }
            };
            both(0, [&](double x) { along.add(x, placed.at(Vec3(x, place.low.y(), place.low.z()))); });
            if (top)
                both(1, [&](double y) { across.add(y - right_face, placed.at(Vec3(place.high.x(), y, 0))); });
            else
                both(2, [&](double z) { across.add(z, placed.at(Vec3(place.high.x(), 0, z))); });
        }
        if (top) return;
        for (const std::size_t end : {0, 1}) {
            const Vec3 hole(job.shape.axle_x[end], 0, job.shape.axle_z[end]);
            along.add(hole.x(), placed.at(hole));
            across.add(hole.z(), placed.at(hole));
            above.add(end == 0 ? Words::tr("R") : Words::tr("F"), placed.at(hole), true);
        }
    };
    const double scale = put_two_views(flow, job, views);
    flow.paragraph(Words::tr("Drawn at %1 of true size: read the numbers here, cut from the templates.")
                       .arg(QStringLiteral("%1 %").arg(100 * scale, 0, 'f', 0)),
                   map_note);
    put_cut_table(flow, job, places);
    flow.paragraph(
        Words::tr("Drill bits wander and saws take %1 of wood: stay on the waste side. Drill tolerance of "
                  "your tools: %2, saw: %3.")
            .arg(job.words.length(job.project.tools.saw_kerf),
                 job.words.length(job.project.tools.drill_tolerance),
                 job.words.length(job.project.tools.saw_tolerance)),
        map_note);
    put_cautions(flow, {"drill", "saw"});
}

void put_ballast_map_at(Flow& flow, const Job& job, double size) {
    const Words& words = job.words;
    const std::vector<std::size_t> order = fitting_order(job.plan, job.shape);
    flow.start_page(Words::tr("Ballast map"));
    if (order.empty()) {
        flow.paragraph(Words::tr("This plan has no weights."));
        return;
    }
    flow.paragraph(
        Words::tr("The numbers are the order of fitting. Places are those of each weight's middle, from the "
                  "block's tail end, right side and bottom. The quartered circle is the car's balance point: "
                  "%1 ahead of the rear axle.")
            .arg(words.length(job.figures.balance_ahead_of_rear_axle)));
    TwoViews views;
    views.wheels = views.ballast = views.centre = true;
    views.size = size;
    views.say = [&](const Placement& placed, Callouts& above, Callouts& below, Callouts&) {
        for (std::size_t n = 0; n < order.size(); ++n)
            above.add(QString::number(n + 1), placed.at(middle_of(job, order[n])), true);
        if (placed.view == View::top) return;
        const Vec3 rear(job.shape.axle_x[0], 0, job.shape.ground[0].y()),
            front(job.shape.axle_x[1], 0, job.shape.ground[1].y());
        const Vec3 under(job.figures.centre.x(), 0, job.shape.ground_at(job.figures.centre.x()));
        below.add(Words::tr("rear axle"), placed.at(rear));
        below.add(Words::tr("balance point, %1 from the tail").arg(words.length(job.figures.centre.x())),
                  placed.at(under));
        below.add(Words::tr("front axle: %1 on a balance").arg(words.mass(job.figures.front_load)),
                  placed.at(front));
    };
    put_two_views(flow, job, views);
    Table table;
    const QString unit = words.length_unit();
    table.columns = {{Words::tr("No."), 9},
                     {Words::tr("Weight"), -2.2},
                     {words.mass_unit(), 14, Align::right},
                     {words.second_mass_unit(), 14, Align::right},
                     {Words::tr("Lies in"), -1.2},
                     {Words::tr("From tail, %1").arg(unit), 15, Align::right},
                     {Words::tr("From right side, %1").arg(unit), 16, Align::right},
                     {Words::tr("From bottom, %1").arg(unit), 16, Align::right},
                     {Words::tr("Held by"), -1.8},
                     {Words::tr("In"), 8, Align::middle}};
    const double right = -job.plan.body.block.y() / 2;
    std::vector<std::string> codes;
    for (std::size_t n = 0; n < order.size(); ++n) {
        const BallastPlan& piece = job.plan.ballast[order[n]];
        const Vec3 at = middle_of(job, order[n]);
        table.rows.push_back({QString::number(n + 1),
                              Words::tr("%1 (%2)").arg(from_utf8(piece.name), piece_words(piece, words)),
                              words.bare_mass(piece.mass), words.second_mass(piece.mass),
                              piece.in.empty() ? Words::tr("no cut") : from_utf8(piece.in),
                              words.bare_length(at.x()), words.bare_length(at.y() - right),
                              words.bare_length(at.z()), held_words(piece, words), Cell::Kind::box});
        const auto more = piece_cautions(piece);
        codes.insert(codes.end(), more.begin(), more.end());
    }
    put_table(flow, table);
    put_cautions(flow, codes);
}

} // namespace

void put_cut_map(Flow& flow, const Job& job) {
    flow.section([&](double size) { put_cut_map_at(flow, job, size); });
}

void put_ballast_map(Flow& flow, const Job& job) {
    flow.section([&](double size) { put_ballast_map_at(flow, job, size); });
}

} // namespace rampwright::ui::paper

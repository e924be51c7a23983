#include "project/number_text.hpp"
#include "project/read_parts.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/core/say.hpp>

#include <cmath>

namespace rampwright {

namespace {

TrackPiece read_track_piece(const Node& piece) {
    enum class Kind { straight, arc };
    if (piece["kind"].word<Kind>({{"straight", Kind::straight}, {"arc", Kind::arc}}) == Kind::straight)
        return Straight{piece["length_mm"].number(above(0, 100000))};
    Arc arc;
    arc.radius = piece["radius_mm"].number(from_to(50, 1e6));
    arc.turn = piece["turn_deg"].number(from_to(-90, 90));
    if (arc.turn == 0)
        piece["turn_deg"].refuse(Core::tr("an arc that does not turn"),
                                 Core::tr("give the angle it turns by, or make it a straight"));
    arc.easing = piece["easing_mm"].number(from_to(0, 100000), {0});
    // Each easing turns by half of what the full curvature would: both together turn by easing / radius.
    const double longest = arc.radius * std::abs(arc.turn);
    if (arc.easing > longest)
        piece["easing_mm"].refuse(Core::tr("an easing longer than the arc can hold"),
                                  Core::tr("give at most {what} mm (radius times the angle it turns by)",
                                           {{"what", plain_number(std::floor(longest / millimetre))}}));
    return arc;
}

/// Along the surface; an arc's two easings make it longer by one of them.
double length_of(const TrackPiece& piece) {
    if (const auto* straight = std::get_if<Straight>(&piece)) return straight->length;
    const Arc& arc = std::get<Arc>(piece);
    return arc.radius * std::abs(arc.turn) + arc.easing;
}

void read_shape(const Node& track, TrackPlan& plan) {
    const Node pieces = track["pieces"];
    const Node measured = track["measured_mm"];
    if (pieces.present() && measured.present())
        track.refuse(Core::tr("the track is given twice, by \"pieces\" and by \"measured_mm\""),
                     Core::tr("keep one of them"));
    if (!pieces.present() && !measured.present())
        track.refuse(Core::tr("the track has no shape"), Core::tr("give \"pieces\" or \"measured_mm\""));
    for (const Node& piece : pieces.rows())
        plan.pieces.push_back(read_track_piece(piece));
    if (pieces.present() && plan.pieces.empty())
        pieces.refuse(Core::tr("the list of pieces is empty"), Core::tr("give at least one piece"));
    for (const Node& point : measured.rows()) {
        const Vec2 at = point.point2(from_to(-1e6, 1e6));
        if (!plan.measured.empty() && at.x() <= plan.measured.back().x())
            point.refuse(Core::tr("a measured point that is not beyond the one before it"),
                         Core::tr("list the points from the start to the finish, X growing"));
        plan.measured.push_back(at);
    }
    if (measured.present() && plan.measured.size() < 4)
        measured.refuse(Core::tr("{what} measured points", {{"what", std::to_string(plan.measured.size())}}),
                        Core::tr("give at least 4, more where the track bends"));
}

double total_length(const TrackPlan& plan) {
    double length = 0;
    for (const TrackPiece& piece : plan.pieces)
        length += length_of(piece);
    for (std::size_t i = 1; i < plan.measured.size(); ++i)
        length += (plan.measured[i] - plan.measured[i - 1]).norm();
    return length;
}

double read_first_slope(const Node& slope, const TrackPlan& plan) {
    if (slope.present()) {
        const double value = slope.number(from_to(-80, 80));
        if (value > 0)
            slope.refuse(Core::tr("a positive first slope: the track would start uphill"),
                         Core::tr("slopes are negative downhill; give {what} with a minus",
                                  {{"what", plain_number(-value / degree)}}));
        return value;
    }
    // Usual tracks end level: what the pieces turn by is what the first one falls by.
    double turn = 0;
    for (const TrackPiece& piece : plan.pieces)
        if (const auto* arc = std::get_if<Arc>(&piece)) turn += arc->turn;
    return slope.assume_si(turn > 0 ? -turn : -25 * degree, 0.5);
}

/// How well the lane is known. A fall and a way that are given a sigma keep it; a lane nobody has measured
/// has wide ones.
void read_knowledge(const Node& track, TrackPlan& plan) {
    if (const Node known = track["known"]; known.present())
        plan.known =
            known.word<LaneKnown>({{"measured", LaneKnown::measured}, {"unknown", LaneKnown::unknown}});
    const bool unknown = plan.known == LaneKnown::unknown;
    if (unknown && !plan.measured.empty())
        track["known"].refuse(Core::tr("a lane that was measured point by point is called unknown"),
                              Core::tr("leave \"known\" out, or describe the guess by \"pieces\""));
    const auto sigma = [&](const char* key, double usual_mm) {
        const Node node = track[key];
        if (node.present()) return node.number(from_to(0, 5000));
        return unknown ? node.assume_si(usual_mm * millimetre, 0) : 0.0;
    };
    plan.drop_sigma = sigma("drop_sigma_mm", 150);
    plan.way_sigma = sigma("way_sigma_mm", 800);
}

} // namespace

TrackPlan read_track(const Node& track) {
    TrackPlan plan;
    plan.title = track["title"].text();
    plan.start_height = track["start_height_mm"].maybe_number(above(0, 20000));
    read_shape(track, plan);
    if (plan.measured.empty()) plan.first_slope = read_first_slope(track["first_slope_deg"], plan);

    plan.start_line = track["start_line_mm"].number(from_to(0, 1e6), {0});
    const Node finish = track["finish_line_mm"];
    plan.finish_line =
        finish.present() ? finish.number(above(0, 1e6)) : finish.assume_si(total_length(plan), 5);
    if (plan.finish_line <= plan.start_line)
        finish.refuse(
            Core::tr("the finish line is not beyond the start line"),
            Core::tr(
                "both are measured along the surface from the start-gate end; give a larger finish_line_mm"));

    if (const Node rail = track["rail"]; rail.present())
        plan.rail = LaneRail{rail["width_mm"].number(above(0, 200), usual_length(41)),
                             rail["height_mm"].number(above(0, 100), usual_length(6))};
    else if (!rail.stated_null())
        rail.assume("none");
    plan.quality = track["quality"].word<Quality>(
        {{"rough", Quality::rough}, {"fair", Quality::fair}, {"smooth", Quality::smooth}}, Quality::fair);
    plan.gravity = track["gravity_m_s2"].number(from_to(9.5, 10.1), {standard_gravity, 0, Tag::definition});
    plan.clock_offset.value = track["clock_offset_s"].number(from_to(-1, 1), {0, 0, Tag::fit});
    plan.run_scatter = track["run_scatter_s"].number(from_to(0, 1), {0.003, 0.001, Tag::fit});
    read_knowledge(track, plan);
    return plan;
}

} // namespace rampwright

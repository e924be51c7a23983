#include "project/edit_support.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <cmath>

namespace rampwright {

namespace {

double number_in(const Json& object, const char* key) {
    const auto found = object.find(key);
    return found != object.end() && found->is_number() ? found->get<double>() : 0;
}

/// Of the described surface, mm; an arc's two easings make it longer by one of them.
double surface_length(const Json& track) {
    double length = 0;
    if (const auto pieces = track.find("pieces"); pieces != track.end() && pieces->is_array())
        for (const Json& piece : *pieces)
            length += text_in(piece, "kind", "") == "arc"
                          ? number_in(piece, "radius_mm") * std::abs(number_in(piece, "turn_deg")) * degree +
                                number_in(piece, "easing_mm")
                          : number_in(piece, "length_mm");
    if (const auto points = track.find("measured_mm"); points != track.end() && points->is_array())
        for (std::size_t n = 1; n < points->size(); ++n)
            length += std::hypot((*points)[n][0].get<double>() - (*points)[n - 1][0].get<double>(),
                                 (*points)[n][1].get<double>() - (*points)[n - 1][1].get<double>());
    return length;
}

/// What was said of the old shape and no longer holds.
void settle(Json& track) {
    track.erase("start_height_mm");
    // A curve drawn through points may be a hair shorter than the lines between them.
    constexpr double spare = 1;
    const double end = std::floor(surface_length(track) - (track.contains("measured_mm") ? spare : 0));
    if (number_in(track, "finish_line_mm") > end)
        track["finish_line_mm"] = file_number(end * 1e-3, "finish_line_mm");
}

Json& pieces_of(Json& root) {
    Json& track = object_in(root, "track");
    if (track.contains("measured_mm") && !track["measured_mm"].is_null())
        throw Problem(Exit::could_not, "/track/measured_mm",
                      Core::tr("this lane is given by measured points"),
                      Core::tr("change the points, or put another lane in"));
    return list_in(track, "pieces");
}

std::string piece_kind(const Json& piece) {
    return text_in(piece, "kind", "piece");
}

} // namespace

Edit set_track(const Document& document, const Json& track) {
    return make_edit(document, Core::tr("Lane") + ": " + text_in(track, "title", "another"),
                     [&](Json& root) { root["track"] = track; });
}

Edit add_track_piece(const Document& document, std::size_t before, const Json& piece) {
    return make_edit(document, Core::tr("Add to the lane") + ": " + piece_kind(piece), [&](Json& root) {
        Json& pieces = pieces_of(root);
        if (before > pieces.size())
            throw Problem(Exit::could_not, "/track/pieces", Core::tr("there is no such place in the lane"),
                          Core::tr("choose one that is there"));
        pieces.insert(pieces.begin() + std::ptrdiff_t(before), piece);
        settle(root["track"]);
    });
}

Edit set_track_piece(const Document& document, std::size_t index, const Json& piece) {
    return make_edit(document, Core::tr("Change the lane") + ": " + piece_kind(piece), [&](Json& root) {
        Json& old = element_of(pieces_of(root), index, "/track/pieces", "piece of the lane");
        if (old == piece) return;
        old = piece;
        settle(root["track"]);
    });
}

Edit remove_track_piece(const Document& document, std::size_t index) {
    return make_edit(document, Core::tr("Remove from the lane"), [&](Json& root) {
        Json& pieces = pieces_of(root);
        element_of(pieces, index, "/track/pieces", "piece of the lane");
        pieces.erase(index);
        settle(root["track"]);
    });
}

Edit set_track_points(const Document& document, const std::vector<Vec2>& points) {
    return make_edit(document, Core::tr("Measured points of the lane"), [&](Json& root) {
        Json list = Json::array();
        for (const Vec2& point : points)
            list.push_back(file_point(point, "measured_mm"));
        Json& track = object_in(root, "track");
        if (track.contains("measured_mm") && track["measured_mm"] == list) return;
        track.erase("pieces");
        track.erase("first_slope_deg");
        track.erase("known"); // it was measured
        track["measured_mm"] = std::move(list);
        settle(track);
    });
}

Edit set_track_lines(const Document& document, double start, double finish) {
    return make_edit(document, Core::tr("Start and finish lines"), [&](Json& root) {
        Json& track = object_in(root, "track");
        track["start_line_mm"] = file_number(start, "start_line_mm");
        track["finish_line_mm"] = file_number(finish, "finish_line_mm");
    });
}

} // namespace rampwright

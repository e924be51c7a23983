#include <rampwright/core/problem.hpp>
#include <rampwright/track/measured.hpp>
#include <rampwright/track/track.hpp>

#include <algorithm>
#include <cmath>
#include <sstream>

namespace rampwright {

namespace {

Problem track_problem(const std::string& where, const std::string& wrong, const std::string& remedy) {
    return {Exit::could_not, "/track" + where, wrong, remedy};
}

std::string millimetres(double metres) {
    std::ostringstream text;
    text.imbue(std::locale::classic());
    text.precision(6);
    text << metres * 1e3 << " mm";
    return text.str();
}

} // namespace

Track::Track(const TrackPlan& plan) : gravity_(plan.gravity), clock_offset_(plan.clock_offset.value) {
    std::vector<CurvatureStretch> stretches;
    std::complex<double> at = 0;
    double slope = plan.first_slope;
    if (!plan.measured.empty()) {
        MeasuredCurve curve = fit_measured(plan.measured);
        stretches = curve.stretches;
        at = {curve.start.x(), curve.start.y()};
        slope = curve.slope;
        fit_rms_ = curve.rms;
        fit_max_ = curve.greatest;
    } else {
        for (std::size_t n = 0; n < plan.pieces.size(); ++n) {
            if (const auto* straight = std::get_if<Straight>(&plan.pieces[n])) {
                stretches.push_back({straight->length, 0, 0});
                continue;
            }
            const Arc& arc = std::get<Arc>(plan.pieces[n]);
            // Curvature rises over the first easing and falls over the last, each turning half of k * easing,
            // so a piece of turn phi and radius r is phi r + easing long.
            const double length = std::abs(arc.turn) * arc.radius + arc.easing;
            const double k = std::copysign(1 / arc.radius, arc.turn);
            if (arc.easing > 0.5 * length * (1 + 1e-12))
                throw track_problem("/pieces/" + std::to_string(n) + "/easing_mm",
                                    "two easings of " + millimetres(arc.easing) +
                                        " do not fit into an arc that turns " +
                                        millimetres(std::abs(arc.turn) * arc.radius) + " of its circle",
                                    "shorten the easing to at most the arc's radius times its turn");
            if (arc.easing > 0) stretches.push_back({arc.easing, 0, k});
            if (length - 2 * arc.easing > 0) stretches.push_back({length - 2 * arc.easing, k, k});
            if (arc.easing > 0) stretches.push_back({arc.easing, k, 0});
        }
    }
    pieces_.emplace_back(-1.0, 1.0, at - std::polar(1.0, slope), std::polar(1.0, slope), 0, 0);
    for (const CurvatureStretch& stretch : stretches)
        append(stretch.length, stretch.curvature, stretch.curvature_end);
    length_ = pieces_.back().end();
    append(1.0, 0, 0);
    set_lines(plan);
}

void Track::append(double length, double curvature, double curvature_end) {
    if (length <= 0) return;
    const double turn = 0.5 * (std::abs(curvature) + std::abs(curvature_end)) * length;
    const int parts = std::max(1, int(std::ceil(turn / SurfacePiece::longest_turn)));
    const double rate = (curvature_end - curvature) / length;
    for (int part = 0; part < parts; ++part) {
        const SurfacePiece& last = pieces_.back();
        const SurfacePoint joint = last.point(last.length());
        const double step = length / parts;
        const double k = curvature + rate * step * part;
        pieces_.emplace_back(last.end(), step, joint.at, joint.tangent / std::abs(joint.tangent), k, rate);
    }
}

void Track::set_lines(const TrackPlan& plan) {
    start_line_ = plan.start_line;
    finish_line_ = plan.finish_line;
    if (!(finish_line_ > start_line_))
        throw track_problem(
            "/finish_line_mm", "the finish line does not lie behind the start line",
            "give both as lengths along the surface from the start-gate end, finish after start");
    if (finish_line_ > length_ + 1e-9)
        throw track_problem("/finish_line_mm",
                            "the finish line at " + millimetres(finish_line_) +
                                " lies beyond the track's end at " + millimetres(length_),
                            "move the line or lengthen the last piece");
    // The lowest point is at a joint, at a line, or where a piece turns from falling to rising.
    double lowest = point(start_line_).at.imag();
    auto look = [&](double s) { lowest = std::min(lowest, point(s).at.imag()); };
    look(length_);
    for (std::size_t n = 1; n + 1 < pieces_.size(); ++n) {
        const SurfacePiece& piece = pieces_[n];
        look(piece.start());
        const double before = slope(piece.start()), after = before + piece.turn(piece.length());
        if (before < 0 && after > 0) {
            double low = 0, high = piece.length();
            for (int halving = 0; halving < 60; ++halving) {
                const double middle = 0.5 * (low + high);
                (before + piece.turn(middle) < 0 ? low : high) = middle;
            }
            look(piece.start() + low);
        }
    }
    start_height_ = point(start_line_).at.imag() - lowest;
    // A millimetre is refused, a height rounded to the millimetre is not.
    if (plan.start_height && std::abs(*plan.start_height - start_height_) > 0.999e-3)
        throw track_problem("/start_height_mm",
                            "the start line is said to be " + millimetres(*plan.start_height) +
                                " high, but the shape puts it " + millimetres(start_height_) + " high",
                            "measure both again, or leave start_height_mm out");
}

std::size_t Track::find_piece(double s) const {
    // The continuations have no end: the first and last piece take whatever lies outside.
    auto after =
        std::upper_bound(pieces_.begin() + 1, pieces_.end(), s,
                         [](double value, const SurfacePiece& piece) { return value < piece.start(); });
    return std::size_t(after - pieces_.begin()) - 1;
}

SurfacePoint Track::point(double s) const {
    const SurfacePiece& piece = pieces_[find_piece(s)];
    return piece.point(s - piece.start());
}

double Track::slope(double s) const {
    return std::arg(point(s).tangent);
}

} // namespace rampwright

#include "car/fit.hpp"
#include "templates/strokes.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/templates/line_work.hpp>

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

/// The car's axes that run across, up and towards the viewer.
struct Axes {
    int across = 0, up = 2, depth = 1;
    double towards = -1; ///< sign of the depth axis towards the viewer: the car's right, and above it

    explicit Axes(TemplateView view) {
        if (view == TemplateView::top) {
            up = 1;
            depth = 2;
            towards = 1;
        }
    }
    Vec2 seen(const Vec3& p) const { return {p[across], p[up]}; }
};

constexpr double flat = 1e-9;           ///< a direction this close to square to the view is square to it
constexpr double past = 3 * millimetre; ///< how far axes are drawn beyond what they belong to

/// A bore's outline: seen end-on a circle, from the side a rectangle with its point, aslant its two mouths
/// and the lines between them.
void add_bore(const Bore& bore, const Axes& axes, const LinePath& like, std::vector<LinePath>& paths) {
    const double radius = bore.diameter / 2;
    const Vec3 axis = (bore.to - bore.from).normalized();
    const Vec2 from = axes.seen(bore.from), to = axes.seen(bore.to), run = axes.seen(axis);
    const double lean = run.norm(), facing = std::abs(axis[axes.depth]);
    LinePath line = like;
    LinePath middle = like;
    middle.role = LineRole::centre;
    if (lean < flat) {
        line.circle = Circle{from, radius};
        paths.push_back(line);
        for (const Vec2& arm : {Vec2(radius + past / 2, 0), Vec2(0, radius + past / 2)}) {
            middle.strokes = {straight_stroke(from - arm, from + arm)};
            paths.push_back(middle);
        }
        return;
    }
    const Vec2 u = run / lean, side = radius * Vec2(-u.y(), u.x());
    const double tip = bore.pointed ? radius / std::tan(drill_point_angle / 2) * lean : 0;
    const Vec2 apex = to + tip * u;
    middle.strokes = {straight_stroke(from - past * u, apex + past * u)};
    paths.push_back(middle);
    line.closed = true;
    if (facing < flat) {
        std::vector<Vec2> corners{from - side, to - side};
        if (tip > 0) corners.push_back(apex);
        corners.insert(corners.end(), {to + side, from + side});
        line.strokes = straight_strokes(corners, true);
        paths.push_back(line);
        return;
    }
    for (const Vec2& end : {from, to}) {
        line.strokes = ellipse_strokes(end, radius * facing * u, side);
        paths.push_back(line);
    }
    line.closed = false;
    for (const double sign : {-1., 1.}) {
        line.strokes = {straight_stroke(from + sign * side, to + sign * side)};
        paths.push_back(line);
        // The point's outline touches the mouth's ellipse, if the point shows beyond it.
        const double reach = tip / (radius * facing);
        if (reach <= 1) continue;
        const double touch = std::acos(1 / reach);
        line.strokes = {straight_stroke(
            to + radius * facing * std::cos(touch) * u + sign * std::sin(touch) * side, apex)};
        paths.push_back(line);
    }
}

std::vector<LinePath> lines_of(const Cut& cut, const Axes& axes, const LinePath& like) {
    std::vector<LinePath> paths;
    if (const auto* pocket = std::get_if<Pocket>(&cut)) {
        const Vec2 low = axes.seen(pocket->low), high = axes.seen(pocket->high);
        LinePath line = like;
        line.closed = true;
        line.strokes = straight_strokes({low, {high.x(), low.y()}, high, {low.x(), high.y()}}, true);
        paths.push_back(std::move(line));
    } else {
        add_bore(std::get<Bore>(cut), axes, like, paths);
    }
    return paths;
}

Eigen::AlignedBox3d box_of(const Cut& cut) {
    if (const auto* pocket = std::get_if<Pocket>(&cut)) return {pocket->low, pocket->high};
    const Bore& bore = std::get<Bore>(cut);
    const Vec3 axis = (bore.to - bore.from).normalized();
    const Vec3 reach = bore.diameter / 2 * (Vec3::Ones() - axis.cwiseAbs2()).cwiseMax(0).cwiseSqrt();
    Eigen::AlignedBox3d box(bore.from.cwiseMin(bore.to) - reach, bore.from.cwiseMax(bore.to) + reach);
    return box;
}

/// Whether most lines of sight into a cut meet wood before they meet the cut.
bool is_hidden(const BodyOutlines& outlines, std::span<const Cut> cuts, const Cut& cut, const Axes& axes) {
    constexpr int samples = 7;
    const Eigen::AlignedBox3d box = box_of(cut);
    int behind = 0, in_front = 0;
    for (int i = 0; i < samples; ++i)
        for (int j = 0; j < samples; ++j) {
            Vec3 through = box.center();
            through[axes.across] = box.min()[axes.across] + box.sizes()[axes.across] * (i + 0.5) / samples;
            through[axes.up] = box.min()[axes.up] + box.sizes()[axes.up] * (j + 0.5) / samples;
            through[axes.depth] = 0;
            const auto open = inside_cut(cut, through, Vec3::Unit(axes.depth));
            if (!open || wood_along(outlines, {}, through, axes.depth).empty()) continue;
            bool blocked = false;
            for (const WoodStretch& wood : wood_along(outlines, cuts, through, axes.depth))
                blocked = blocked || (axes.towards < 0 ? wood.range.high <= open->low + flat
                                                       : wood.range.low >= open->high - flat);
            ++(blocked ? behind : in_front);
        }
    return behind > in_front;
}

LinePath outline_path(const Outline& outline, const std::string& key) {
    LinePath path;
    path.key = key;
    path.closed = true;
    for (const OutlinePiece& piece : outline_pieces(outline))
        path.strokes.push_back({piece.control, piece.straight});
    return path;
}

/// A weight's outline; a turned one is drawn turned where it is seen from above.
LinePath ballast_path(const BallastPlan& piece, const Axes& axes, LinePath like) {
    const auto around = box_around(piece);
    const Vec2 at = axes.seen(piece.at);
    const bool above = axes.depth == 2;
    const bool upright = piece.shape == PieceShape::cylinder &&
                         (piece.axis == axes.depth && (above || std::abs(std::sin(piece.turned)) < flat));
    if (piece.shape == PieceShape::sphere || upright) {
        like.circle = Circle{at, piece.size[0] / 2};
        return like;
    }
    Vec2 half = axes.seen(around->sizes()) / 2;
    double turned = 0;
    if (above && piece.shape != PieceShape::cylinder) {
        half = Vec2(piece.size[0], piece.size[1]) / 2;
        turned = piece.turned;
    } else if (above) {
        half =
            (piece.axis == 0 ? Vec2(piece.size[1], piece.size[0]) : Vec2(piece.size[0], piece.size[1])) / 2;
        turned = piece.turned;
    }
    const Eigen::Rotation2Dd turn(turned);
    std::vector<Vec2> corners;
    for (const Vec2& sign : {Vec2(-1, -1), Vec2(1, -1), Vec2(1, 1), Vec2(-1, 1)})
        corners.push_back(at + turn * Vec2(sign.cwiseProduct(half)));
    like.closed = true;
    like.strokes = straight_strokes(corners, true);
    return like;
}

void add_label(LineWork& work, const std::vector<LinePath>& drawn, const std::string& text, LineRole role) {
    Eigen::AlignedBox2d box;
    for (const LinePath& path : drawn)
        if (path.role == role)
            for (const Vec2& p : flatten(path, 1e-4))
                box.extend(p);
    // Left and right of an axle show as one.
    const bool said = std::any_of(work.labels.begin(), work.labels.end(), [&](const LineLabel& label) {
        return label.text == text && (label.at - box.center()).norm() < millimetre;
    });
    if (!box.isEmpty() && !said) work.labels.push_back({box.center(), text, role});
}

void add_cuts(LineWork& work, const CarPlan& plan, const CarModel& car, const BodyOutlines& outlines,
              const BodyShape& shape, const Axes& axes) {
    const std::vector<Vec2> edge =
        flatten(work.view == TemplateView::side ? shape.profile : shape.plan, 2e-6);
    const BodyMeasure measured = measure(shape);
    for (std::size_t i = 0; i < shape.cuts.size(); ++i) {
        if (measured.removed[i].volume < 1e-12) continue; // a thousandth of a cubic millimetre: no wood there
        const bool own = i < plan.body.cuts.size();
        LinePath like;
        like.role = own ? LineRole::cut : LineRole::hole;
        like.hidden = is_hidden(outlines, shape.cuts, shape.cuts[i], axes);
        like.key = car.key + (own ? "/body/cuts/" + std::to_string(i) : "/axles");
        const double x = box_of(shape.cuts[i]).center().x();
        like.name = own                                                    ? plan.body.cuts[i].name
                    : std::abs(x - car.rear_x) < std::abs(x - car.front_x) ? "rear axle"
                                                                           : "front axle";
        std::vector<LinePath> drawn;
        for (const LinePath& path : lines_of(shape.cuts[i], axes, like)) {
            if (path.role == LineRole::centre) {
                drawn.push_back(path);
                continue;
            }
            for (LinePath& piece : clip_to(edge, path))
                drawn.push_back(std::move(piece));
        }
        add_label(work, drawn, like.name, like.role);
        work.paths.insert(work.paths.end(), drawn.begin(), drawn.end());
    }
}

/// Axes are drawn a little beyond the wood at most.
void shorten_axes(LineWork& work) {
    const std::vector<Vec2> frame{work.low - Vec2(past, past),
                                  {work.high.x() + past, work.low.y() - past},
                                  work.high + Vec2(past, past),
                                  {work.low.x() - past, work.high.y() + past}};
    std::vector<LinePath> kept;
    for (LinePath& path : work.paths) {
        if (path.role != LineRole::centre) {
            kept.push_back(std::move(path));
            continue;
        }
        for (LinePath& piece : clip_to(frame, path))
            kept.push_back(std::move(piece));
    }
    work.paths = std::move(kept);
}

} // namespace

LineWork draw_template(const CarPlan& plan, const CarModel& car, TemplateView view) {
    const Axes axes(view);
    const BodyOutlines outlines(plan.body);
    const BodyShape shape = body_shape(plan, car, outlines);
    LineWork work;
    work.view = view;
    const bool side = view == TemplateView::side;
    work.paths.push_back(outline_path(side ? shape.profile : shape.plan,
                                      car.key + (side ? "/body/profile_mm" : "/body/plan_mm")));
    Eigen::AlignedBox2d box;
    for (const Vec2& p : flatten(work.paths.front(), 1e-6))
        box.extend(p);
    work.low = box.min();
    work.high = box.max();

    add_cuts(work, plan, car, outlines, shape, axes);
    if (!side) {
        LinePath middle;
        middle.role = LineRole::centre;
        middle.key = car.key + "/body";
        middle.strokes = {straight_stroke({work.low.x() - past, 0}, {work.high.x() + past, 0})};
        work.paths.push_back(middle);
    }
    shorten_axes(work);
    for (std::size_t i = 0; i < plan.ballast.size(); ++i) {
        const BallastPlan& piece = plan.ballast[i];
        if (piece.shape == PieceShape::putty) continue;
        LinePath like;
        like.role = LineRole::ballast;
        like.hidden = true;
        like.key = car.key + "/ballast/" + std::to_string(i);
        like.name = piece.name;
        work.paths.push_back(ballast_path(piece, axes, like));
        add_label(work, {work.paths.back()}, piece.name, LineRole::ballast);
    }
    return work;
}

} // namespace rampwright

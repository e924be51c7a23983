#include "sheet/views.hpp"

#include <rampwright/core/constants.hpp>

#include <algorithm>
#include <array>

namespace rampwright::ui::paper {
namespace {

constexpr TextStyle view_style{8, true};
constexpr double axis_reach = 3.2; ///< mm that centre lines go beyond the wood

/// What a view shows of the car, m.
QRectF extent_of(View view, const Job& job, const TwoViews& views) {
    QRectF box =
        views.block ? block_box(view, job.plan, job.shape) : job.shape.wood[index(view)].boundingRect();
    if (views.wheels) {
        const CarExtent extent = job.shape.extent();
        box = box.united(QRectF(to_plane(view, extent.low), to_plane(view, extent.high)).normalized());
    }
    return box;
}

void put_view(Flow& flow, const Job& job, const TwoViews& views, View view, double scale) {
    const QRectF box = extent_of(view, job, views), body = flow.body();
    Placement placed{view, {}, scale, {}};
    placed.origin = QPointF(body.left() + axis_reach - box.left() * 1e3 * scale, 0);
    const double left = body.left(), right = body.right();
    const double height = box.height() * 1e3 * scale;
    // The words' places follow from x alone, so they are settled before the view's height on the page is
    // known; a second pass gives them their anchors.
    double top = 0;
    const auto said = [&](double at_y) {
        placed.origin.setY(at_y + box.bottom() * 1e3 * scale);
        std::array<Callouts, 3> words{Callouts(Callouts::Edge::above, left, right, {8, true}),
                                      Callouts(Callouts::Edge::below, left, right),
                                      Callouts(Callouts::Edge::right, at_y - 4, at_y + height + 4)};
        if (views.say) views.say(placed, words[0], words[1], words[2]);
        return words;
    };
    auto words = said(0);
    const bool dimensioned = views.length && view == View::top;
    const double above = words[0].settle(), below = words[1].settle() + (dimensioned ? 8 : 0);
    flow.need(leading_of(view_style) + above + height + below + 6);
    flow.put({left, flow.y() + ascent_of(view_style)},
             view == View::side ? Words::tr("Side view, from the right") : Words::tr("Top view"), view_style);
    top = flow.y() + leading_of(view_style) + above + 1;
    words = said(top);
    for (Callouts& each : words)
        each.settle();

    if (views.block) draw_block(flow, placed, job.plan);
    if (views.wheels && view == View::top) draw_wheels(flow, placed, job.shape);
    draw_tint(flow, placed, job.shape);
    if (views.ballast) draw_ballast(flow, placed, job.shape);
    draw_body(flow, placed, job.lines(view));
    if (views.wheels && view == View::side) draw_wheels(flow, placed, job.shape);
    if (views.centre) draw_centre(flow, placed.at(job.figures.centre), 1.8);
    words[0].put(flow, top - 0.5);
    words[1].put(flow, top + height + 1.5);
    words[2].put(flow, placed.at(QPointF(box.right(), 0)).x() + 1.5);
    if (dimensioned) {
        const auto x_at = [&](double x) { return placed.at(QPointF(x, 0)).x(); };
        draw_dimension(
            flow, x_at(job.model.low.x()), x_at(job.model.high.x()), top + height + 4,
            Words::tr("%1 over all").arg(job.words.length(job.model.high.x() - job.model.low.x())));
    }
    flow.skip(leading_of(view_style) + above + height + below + 5);
}

} // namespace

double put_two_views(Flow& flow, const Job& job, const TwoViews& views) {
    const double width =
        std::max(extent_of(View::side, job, views).width(), extent_of(View::top, job, views).width());
    const double room = flow.body().width() - views.side_strip - 2 * axis_reach;
    // Two views and their words must leave the page room for a few rows.
    const double high =
        extent_of(View::side, job, views).height() + extent_of(View::top, job, views).height();
    const double scale = views.size * std::min({views.most_scale, room / (width * 1e3),
                                                (flow.body().height() - 90) / (high * 1e3)});
    put_view(flow, job, views, View::side, scale);
    put_view(flow, job, views, View::top, scale);
    return scale;
}

} // namespace rampwright::ui::paper

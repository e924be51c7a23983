#include "sheet/callouts.hpp"
#include "sheet/car_drawing.hpp"
#include "sheet/check_bars.hpp"
#include "sheet/steps.hpp"
#include "sheet/tiles.hpp"

#include <rampwright/core/constants.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright::ui::paper {
namespace {

constexpr TextStyle name_style{9.5, true}, note_style{7.5, false}, tick_style{6.5, false};
/// mm around a template: the centre lines and register marks beyond the block.
constexpr double border = 3, ruler_height = 6.5;

/// A template as one print needs it, split where the paper is smaller.
struct TemplatePlan {
    View view;
    QRectF box;                  ///< of the block on the view's plane, mm
    std::vector<Tile> along, up; ///< windows of the box with its border, mm
    bool whole() const { return along.size() == 1 && up.size() == 1; }
};

double head_height() {
    return leading_of(name_style) + leading_of(note_style) + 1;
}

QString view_title(View view) {
    return view == View::side ? Words::tr("Side template, true size") : Words::tr("Top template, true size");
}

QString view_note(View view) {
    return view == View::side
               ? Words::tr(
                     "Seen from the right, nose to the right: glue it on the block's right side, bottom "
                     "and tail edges together.")
               : Words::tr("Seen from above, nose to the right: glue it on the block's top face, tail edges "
                           "and middle lines together.");
}

/// Ticks from the tail, below the template, so that places can be read off it: a number every 10 mm, or every
/// inch with eighths between; the first one with room
/// for it says the unit.
void put_ruler(Flow& flow, const Job& job, const Placement& placed, const TemplatePlan& plan,
               const Tile& tile, double y) {
    const bool metric = job.words.units == UnitSystem::metric;
    const double step = metric ? 5 : inch / millimetre / 8; // mm
    const int every = metric ? 2 : 8;
    // A number whose half would lie beyond the margin is left out: the next one is near.
    const auto fits = [&](const QString& text, double page) {
        const double half = width_of(text, tick_style) / 2;
        return page - half >= flow.body().left() && page + half <= flow.body().right();
    };
    bool unit_said = false;
    for (int n = 0; n * step <= plan.box.right() + 1e-9; ++n) {
        const double x = n * step;
        if (x < tile.from - 1e-9 || x > tile.to + 1e-9) continue;
        const bool numbered = n % every == 0, half = !metric && n % 4 == 0;
        const double page = placed.at(QPointF(x * millimetre, 0)).x();
        flow.line({page, y}, {page, y + (numbered ? 1.8 : half ? 1.4 : 1.0)}, 0.15);
        if (!numbered) continue;
        const QString number = QString::number(metric ? n * 5 : n / every);
        const QString named = Words::tr("%1 %2").arg(number, job.words.length_unit());
        const bool says_unit = !unit_said && fits(named, page);
        unit_said = unit_said || says_unit;
        const QString& text = says_unit ? named : number;
        if (fits(text, page))
            flow.put({page, y + 2.2 + ascent_of(tick_style)}, text, tick_style, Align::middle);
    }
}

void put_register_mark(Flow& flow, QPointF at, const QString& name) {
    QPainterPath ring;
    ring.addEllipse(at, 1.6, 1.6);
    flow.stroke(ring, 0.15);
    flow.line(at - QPointF(2.6, 0), at + QPointF(2.6, 0), 0.15);
    flow.line(at - QPointF(0, 2.6), at + QPointF(0, 2.6), 0.15);
    flow.put(at + QPointF(3, -0.8), name, tick_style, Align::left, true);
}

/// Marks in the overlaps that this tile shares with its neighbours: the same letter on both.
void put_joins(Flow& flow, const Placement& placed, const TemplatePlan& plan, const QRectF& window,
               std::size_t column, std::size_t row) {
    const auto letter = [](std::size_t n) { return QString(QChar(char16_t(u'A' + n % 26))); };
    const auto on_page = [&](double x, double z) {
        return placed.at(QPointF(x * millimetre, z * millimetre));
    };
    for (std::size_t n = 0; n + 1 < plan.along.size(); ++n) {
        if (n != column && n + 1 != column) continue;
        const double x = (plan.along[n].to + plan.along[n + 1].from) / 2;
        const double page = on_page(x, 0).x();
        flow.page().ink.push_back([&] {
            QPainterPath join(QPointF(page, window.top()));
            join.lineTo(page, window.bottom());
            return PathInk{join, 0.15, Stroke::hidden, {}, {}};
        }());
        for (const double share : {0.2, 0.8})
            put_register_mark(flow, {page, window.top() + share * window.height()}, letter(n));
    }
    for (std::size_t n = 0; n + 1 < plan.up.size(); ++n) {
        if (n != row && n + 1 != row) continue;
        const double page = on_page(0, (plan.up[n].to + plan.up[n + 1].from) / 2).y();
        flow.line({window.left(), page}, {window.right(), page}, 0.15, Stroke::hidden);
        for (const double share : {0.3, 0.7})
            put_register_mark(flow, {window.left() + share * window.width(), page},
                              letter(n + plan.along.size()));
    }
}

/// The part of a tile that is its own: up to the middle of what it shares with its neighbours.
Tile own_part(const std::vector<Tile>& tiles, std::size_t n) {
    const auto middle = [&](std::size_t i) { return (tiles[i].to + tiles[i + 1].from) / 2; };
    return {n == 0 ? tiles[n].from : middle(n - 1), n + 1 == tiles.size() ? tiles[n].to : middle(n)};
}

/// Names of the holes in this tile, below the ruler; each is named once.
Callouts hole_names(const Job& job, const Placement& placed, const Tile& own, const QRectF& body, double y) {
    Callouts names(Callouts::Edge::below, body.left(), body.right(), note_style);
    for (const std::size_t end : {0, 1}) {
        const double x = job.shape.axle_x[end] / millimetre;
        if (x < own.from || x >= own.to) continue;
        const double page = placed.at(QPointF(job.shape.axle_x[end], 0)).x();
        names.add(
            (end == 0 ? Words::tr("rear axle, %1 from the tail") : Words::tr("front axle, %1 from the tail"))
                .arg(job.words.length(job.shape.axle_x[end])),
            {page, y});
    }
    return names;
}

double tile_height(const Tile& up, double scale) {
    return head_height() + (up.to - up.from) * scale + ruler_height + 5 + 3 * leading_of(note_style);
}

void put_tile(Flow& flow, const Job& job, const TemplatePlan& plan, std::size_t column, std::size_t row) {
    const Tile &along = plan.along[column], &up = plan.up[row];
    const QRectF& body = flow.body();
    QString title = view_title(plan.view);
    if (!plan.whole())
        title += Words::tr(", part %1 of %2")
                     .arg(row * plan.along.size() + column + 1)
                     .arg(plan.along.size() * plan.up.size());
    flow.put({body.left(), flow.y() + ascent_of(name_style)}, title, name_style);
    if (const double kerf = job.project.tools.saw_kerf; kerf > 0 && is_sawn(job, plan.view))
        flow.put({body.right(), flow.y() + ascent_of(name_style)},
                 Words::tr("Saw on the outside of the line: the blade takes %1.").arg(job.words.length(kerf)),
                 note_style, Align::right);
    flow.skip(leading_of(name_style));
    const QString note = plan.whole()
                             ? view_note(plan.view)
                             : Words::tr("Cut along the dashed line, lay it on the next part so that "
                                         "the rings with the same letter cover each other, and glue.");
    flow.put({body.left(), flow.y() + ascent_of(note_style)}, elided(note, note_style, body.width()),
             note_style);
    flow.skip(leading_of(note_style) + 1);

    const double k = job.scale;
    const double width = (along.to - along.from) * k, height = (up.to - up.from) * k;
    const QRectF window(body.left() + (body.width() - width) / 2, flow.y(), width, height);
    Placement placed{plan.view, {window.left() - along.from * k, window.top() + up.to * k}, k, window};
    draw_block(flow, placed, job.plan);
    draw_body(flow, placed, job.lines(plan.view));
    flow.page().templates.push_back({plan.view, placed.origin, k, window});
    put_joins(flow, placed, plan, window, column, row);
    flow.skip(height);
    put_ruler(flow, job, placed, plan, along, flow.y() + 0.4);
    Callouts names = hole_names(job, placed, own_part(plan.along, column), body, flow.y() + ruler_height);
    flow.skip(ruler_height);
    const double deep = names.settle();
    names.put(flow, flow.y());
    flow.skip(deep + 2.5);
}

TemplatePlan plan_template(const Job& job, const Flow& flow, View view) {
    const QRectF box = block_box(view, job.plan, job.shape);
    TemplatePlan plan{view, QRectF(box.topLeft() * 1e3, box.size() * 1e3), {}, {}};
    const double room_along = flow.body().width() / job.scale;
    const double fixed = tile_height({0, 0}, job.scale) + check_bars_height(job) + 6;
    const double room_up = (flow.body().height() - fixed) / job.scale;
    plan.along = split_into_tiles(plan.box.left() - border, plan.box.right() + border, room_along,
                                  {job.shape.axle_x[0] / millimetre, job.shape.axle_x[1] / millimetre});
    plan.up = split_into_tiles(plan.box.top() - border, plan.box.bottom() + border, room_up);
    return plan;
}

} // namespace

void put_templates(Flow& flow, const Job& job) {
    std::vector<TemplatePlan> plans;
    for (const View view : {View::side, View::top})
        plans.push_back(plan_template(job, flow, view));
    const QString title = Words::tr("Templates");
    const double bars = check_bars_height(job) + 4;
    bool open = false;
    for (const TemplatePlan& plan : plans)
        for (std::size_t row = 0; row < plan.up.size(); ++row)
            for (std::size_t column = 0; column < plan.along.size(); ++column) {
                // Templates and parts share a page where they and the bars fit.
                if (!open || flow.room() < tile_height(plan.up[row], job.scale) + bars) {
                    if (open) put_check_bars(flow, job);
                    flow.start_page(title);
                    open = true;
                }
                put_tile(flow, job, plan, column, row);
            }
    if (open) put_check_bars(flow, job);
}

} // namespace rampwright::ui::paper

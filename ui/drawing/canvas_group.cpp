// What the canvas does with several things at once, and with the clipboard.
#include "drawing/car_canvas.hpp"
#include "drawing/piece_clipboard.hpp"
#include "drawing/snap.hpp"
#include "text/figure_text.hpp"

#include <QApplication>
#include <QClipboard>

#include <algorithm>

namespace rampwright::ui {
namespace {

/// A cut's corner stands for its cut.
Target whole(Target target) {
    if (target.kind == TargetKind::cut_corner) target = {TargetKind::cut, target.index, 0};
    return target;
}

/// Beside the original, so that both can be seen.
Vec3 way_beside(UnitSystem units) {
    return {5 * snap_step(units), 0, 0};
}

} // namespace

bool CarCanvas::is_selected(const Target& target) const {
    return std::any_of(selection_.begin(), selection_.end(),
                       [&](const Target& each) { return whole(each) == whole(target); });
}

void CarCanvas::toggle(const Target& target) {
    std::vector<Target> chosen;
    for (const Target& each : selection_)
        if (goes_with_others(each) && whole(each) != whole(target)) chosen.push_back(whole(each));
    if (!is_selected(target)) chosen.push_back(whole(target));
    select_these(std::move(chosen));
}

void CarCanvas::select_all() {
    std::vector<Target> all;
    for (const Target& target : targets_in(session_.plan(), View::top, reach_))
        if (target.kind == TargetKind::piece || target.kind == TargetKind::cut) all.push_back(target);
    std::reverse(all.begin(), all.end()); // in the order of the lists
    select_these(std::move(all));
}

void CarCanvas::press_paper(const QPointF& pixel, Qt::KeyboardModifiers modifiers) {
    const bool more = modifiers & (Qt::ControlModifier | Qt::ShiftModifier);
    if (!more) select({});
    if (reach_ != Reach::weight && reach_ != Reach::wood) return;
    std::vector<Target> kept;
    for (const Target& each : selection_)
        if (goes_with_others(each)) kept.push_back(whole(each));
    band_ = Band{pixel, pixel, std::move(kept), false};
}

void CarCanvas::band_to(const QPointF& pixel) {
    if (!band_->moving && !means_to_move(band_->pressed_at, pixel)) return;
    band_->moving = true;
    band_->at = pixel;
    const QRectF around = QRectF(band_->pressed_at, pixel).normalized();
    std::vector<Target> chosen = band_->kept;
    for (const View view : all_views) {
        const QRectF seen = around.intersected(map_.frame(view));
        if (seen.isEmpty()) continue;
        for (const Target& target : targets_in(session_.plan(), view, reach_)) {
            if (target.kind != TargetKind::piece && target.kind != TargetKind::cut) continue;
            const auto& outline = target.kind == TargetKind::piece ? shape_.ballast[target.index].outline
                                                                   : shape_.cuts[target.index].outline;
            if (map_.transform(view).map(outline[index(view)]).intersects(seen) &&
                std::find(chosen.begin(), chosen.end(), target) == chosen.end())
                chosen.push_back(target);
        }
    }
    select_these(std::move(chosen));
    update();
}

QString CarCanvas::what_stays(const Group& moved) const {
    const int stay = static_cast<int>(group().size()) - static_cast<int>(moved.size());
    return stay > 0 ? tr("%n of them stay: locked, putty, or in drilled wood.", nullptr, stay) : QString();
}

bool CarCanvas::attempt_group(const std::function<Edit()>& make_edit, const Group& moved,
                              const QString& merge) {
    const QString stay = what_stays(moved);
    bool changed = false;
    const bool taken = attempt(
        [&] {
            Edit edit = make_edit();
            changed = edit.changed();
            return edit;
        },
        merge);
    if (taken) Q_EMIT hint(changed ? stay : tr("Nothing changes: it is so already."));
    return taken && changed;
}

void CarCanvas::select_added(std::size_t pieces, std::size_t cuts) {
    const CarPlan& plan = session_.plan();
    Group added;
    if (reach_ == Reach::weight)
        for (; pieces < plan.ballast.size(); ++pieces)
            added.pieces.push_back(pieces);
    if (reach_ == Reach::wood)
        for (; cuts < plan.body.cuts.size(); ++cuts)
            added.cuts.push_back(cuts);
    select_these(targets_of(added));
}

void CarCanvas::remove_selected() {
    if (selection_.empty() || grab_) return;
    const CarPlan& plan = session_.plan();
    if (!selected_) {
        const Group gone = removable(plan, group());
        if (attempt_group([&] { return remove_group(session_.document(), session_.car(), group()); }, gone))
            select({});
        return;
    }
    const Target target = *selected_;
    const bool outline = !goes_with_others(target) && target.kind != TargetKind::axle;
    const bool putty =
        target.kind == TargetKind::piece && plan.ballast[target.index].shape == PieceShape::putty;
    const bool on_top = target.kind == TargetKind::plan_point;
    if (const QString stuck = why_stuck(plan, target); !stuck.isEmpty() && !putty)
        Q_EMIT hint(stuck);
    else if (outline && (on_top ? plan.body.plan : plan.body.profile).size() <= 3)
        Q_EMIT hint(tr("An outline keeps at least three points."));
    else if (attempt(
                 [&] { return remove_target(session_.document(), session_.car(), target).value_or(Edit{}); }))
        select({});
}

void CarCanvas::duplicate_selected() {
    const Group chosen = group();
    if (chosen.size() == 0 || grab_) return;
    const std::size_t pieces = session_.plan().ballast.size(), cuts = session_.plan().body.cuts.size();
    const Vec3 by = way_beside(session_.project().units);
    if (attempt([&] { return duplicate_group(session_.document(), session_.car(), chosen, by); }))
        select_added(pieces, cuts);
}

void CarCanvas::lock_selected(bool locked) {
    if (grab_ || group().pieces.empty()) return;
    attempt([&] { return lock_group(session_.document(), session_.car(), group().pieces, locked); });
}

void CarCanvas::align_selected(int axis, AlignTo to) {
    if (grab_) return;
    attempt_group([&] { return align_group(session_.document(), session_.car(), group(), axis, to); },
                  movable(session_.plan(), group()));
}

void CarCanvas::space_selected(int axis) {
    if (grab_) return;
    attempt_group([&] { return space_group(session_.document(), session_.car(), group(), axis); },
                  movable(session_.plan(), group()));
}

void CarCanvas::mirror_selected(bool copy) {
    if (grab_) return;
    const std::size_t pieces = session_.plan().ballast.size(), cuts = session_.plan().body.cuts.size();
    if (!copy)
        attempt_group([&] { return mirror_group(session_.document(), session_.car(), group()); }, group());
    else if (attempt([&] { return mirror_copy(session_.document(), session_.car(), group()); }))
        select_added(pieces, cuts);
}

std::unique_ptr<QMimeData> CarCanvas::mime_of(const Group& group) const {
    return pieces_mime(copy_group(session_.document(), session_.car(), group), session_.plan(), group,
                       session_.project().units);
}

bool CarCanvas::copy_selected() {
    const Group chosen = group();
    if (chosen.size() == 0 || grab_) return false;
    QApplication::clipboard()->setMimeData(mime_of(chosen).release());
    Q_EMIT hint(tr("Copied. Paste it into this car, another, or another file."));
    return true;
}

void CarCanvas::cut_selected() {
    if (grab_) return;
    // What stays in the car is not copied either.
    const Group chosen = group(), gone = removable(session_.plan(), chosen);
    if (gone.size() == 0) {
        Q_EMIT hint(tr("All of it stays: it is locked, or in drilled wood."));
        return;
    }
    const QString stay = what_stays(gone);
    auto copied = mime_of(gone); // while it is there
    if (!attempt([&] { return remove_group(session_.document(), session_.car(), gone); })) return;
    QApplication::clipboard()->setMimeData(copied.release());
    select({});
    Q_EMIT hint(stay.isEmpty() ? tr("Cut. Paste it into this car, another, or another file.") : stay);
}

void CarCanvas::paste() {
    if (grab_ || stroke_ || (reach_ != Reach::weight && reach_ != Reach::wood)) return;
    const std::size_t pieces = session_.plan().ballast.size(), cuts = session_.plan().body.cuts.size();
    if (!attempt([&] {
            return paste_group(session_.document(), session_.car(),
                               pieces_on(QApplication::clipboard()->mimeData()),
                               way_beside(session_.project().units));
        }))
        return;
    set_tool(Tool::pick);
    select_added(pieces, cuts);
    const std::size_t came = session_.plan().body.cuts.size() - cuts;
    Q_EMIT hint(came > 0 && reach_ == Reach::weight
                    ? tr("Pasted, with %n pocket(s) or bore(s) this car did not have.", nullptr,
                         static_cast<int>(came))
                    : tr("Pasted."));
}

} // namespace rampwright::ui

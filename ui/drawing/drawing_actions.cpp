#include "drawing/drawing_actions.hpp"

#include "drawing/car_canvas.hpp"

#include <QAction>
#include <QEvent>
#include <QMenu>

#include <algorithm>
#include <array>

namespace rampwright::ui {

DrawingActions::DrawingActions(Session& session, CarCanvas& canvas)
    : QObject(&canvas), session_(session), canvas_(canvas), arrange_(new QMenu(tr("Arra&nge"), &canvas)) {
    const auto make = [this](const QString& text, const QKeySequence& keys, auto slot) {
        auto* action = new QAction(text, this);
        action->setShortcut(keys);
        connect(action, &QAction::triggered, &canvas_, slot);
        return action;
    };
    cut = make(tr("Cu&t"), Qt::CTRL | Qt::Key_X, &CarCanvas::cut_selected);
    copy = make(tr("&Copy"), Qt::CTRL | Qt::Key_C, &CarCanvas::copy_selected);
    paste = make(tr("&Paste"), Qt::CTRL | Qt::Key_V, &CarCanvas::paste);
    select_all = make(tr("Se&lect All"), Qt::CTRL | Qt::Key_A, &CarCanvas::select_all);
    duplicate = make(tr("&Duplicate"), Qt::CTRL | Qt::SHIFT | Qt::Key_D, &CarCanvas::duplicate_selected);
    remove = make(tr("R&emove"), Qt::Key_Delete, &CarCanvas::remove_selected);
    lock = make(tr("Loc&ked in Place"), Qt::CTRL | Qt::Key_L,
                [this] { canvas_.lock_selected(lock->isChecked()); });
    lock->setCheckable(true);
    add_point = make(tr("&Add a Point After It"), Qt::Key_Insert, &CarCanvas::add_point_after_selected);
    corner_or_smooth = make(tr("Corner or &Smooth"), Qt::Key_S, &CarCanvas::toggle_smooth);
    const auto draw = [this](Tool tool) {
        return [this, tool] {
            Q_EMIT wood_wanted();
            canvas_.set_tool(tool);
            canvas_.setFocus();
        };
    };
    draw_pocket = make(tr("Draw a P&ocket"), Qt::CTRL | Qt::Key_K, draw(Tool::pocket));
    draw_bore = make(tr("Draw a &Bore"), Qt::CTRL | Qt::Key_B, draw(Tool::bore));
    // These keys belong to the drawing: a field must be able to take them.
    for (QAction* each : {remove, add_point, corner_or_smooth}) {
        each->setShortcutContext(Qt::WidgetShortcut);
        canvas_.addAction(each);
    }
    make_arranging();
    connect(&canvas_, &CarCanvas::selection_changed, this, &DrawingActions::allow);
    connect(&canvas_, &CarCanvas::reach_changed, this, &DrawingActions::allow);
    connect(&session_, &Session::changed, this, &DrawingActions::allow);
    connect(&session_, &Session::car_chosen, this, &DrawingActions::allow);
    allow();
}

void DrawingActions::make_arranging() {
    const auto add = [this](const QString& text, std::size_t least, auto slot) {
        QAction* action = arrange_->addAction(text, &canvas_, slot);
        arranging_.push_back({action, least});
        return action;
    };
    add(tr("&Mirror Across the Centre Line"), 1, [this] {
        canvas_.mirror_selected(false);
    })->setShortcut(Qt::CTRL | Qt::Key_M);
    mirror_copy_ = add(tr("Mirror a &Copy"), 1, [this] { canvas_.mirror_selected(true); });
    mirror_copy_->setShortcut(Qt::CTRL | Qt::SHIFT | Qt::Key_M);
    add(tr("To the Centre Li&ne"), 1, [this] { canvas_.align_selected(1, AlignTo::centre_line); });
    arrange_->addSeparator();
    struct Line {
        QString text;
        int axis;
        AlignTo to;
    };
    for (const Line& line : {Line{tr("Align &Rear Faces"), 0, AlignTo::low},
                             {tr("Align &Front Faces"), 0, AlignTo::high},
                             {tr("Align &Left Faces"), 1, AlignTo::high},
                             {tr("Align Ri&ght Faces"), 1, AlignTo::low},
                             {tr("Align &Tops"), 2, AlignTo::high},
                             {tr("Align &Bottoms"), 2, AlignTo::low},
                             {tr("Align Middles Along &x (Tail to Nose)"), 0, AlignTo::middle},
                             {tr("Align Middles Along &y (Side to Side)"), 1, AlignTo::middle},
                             {tr("Align Middles Along &z (Height)"), 2, AlignTo::middle}})
        add(line.text, 2, [this, axis = line.axis, to = line.to] { canvas_.align_selected(axis, to); });
    arrange_->addSeparator();
    const std::array<QString, 3> spacing{tr("Space &Evenly Along x"), tr("S&pace Evenly Along y"),
                                         tr("Space E&venly Along z")};
    for (int axis = 0; axis < 3; ++axis)
        add(spacing[static_cast<std::size_t>(axis)], 3, [this, axis] { canvas_.space_selected(axis); });
    canvas_.installEventFilter(this);
}

bool DrawingActions::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Show || event->type() == QEvent::Hide) allow();
    return QObject::eventFilter(watched, event);
}

void DrawingActions::fill(QMenu& menu) {
    menu.addActions({cut, copy, paste, duplicate, remove});
    menu.addSeparator();
    menu.addAction(select_all);
    menu.addAction(lock);
    menu.addMenu(arrange_);
}

void DrawingActions::serve(QWidget& list) {
    list.addAction(remove);
    list.setContextMenuPolicy(Qt::CustomContextMenu);
    connect(&list, &QWidget::customContextMenuRequested, this, [this, &list](const QPoint& at) {
        QMenu menu(&list);
        fill(menu);
        menu.exec(list.mapToGlobal(at));
    });
}

void DrawingActions::allow() {
    const CarPlan& plan = session_.plan();
    const auto valid = [&](const Target& target) {
        return target.kind == TargetKind::piece ? target.index < plan.ballast.size()
                                                : target.index < plan.body.cuts.size();
    };
    std::vector<Target> chosen = canvas_.selection();
    std::erase_if(chosen, [&](const Target& each) { return !goes_with_others(each) || !valid(each); });
    const bool drawn =
        !canvas_.isHidden(); // hidden behind another view of its step it keeps its keys to itself
    const bool some = canvas_.reach() == Reach::weight || canvas_.reach() == Reach::wood;
    const Group group = group_of(chosen);
    const auto& target = canvas_.selected();
    const bool point =
        target && (target->kind == TargetKind::profile_point || target->kind == TargetKind::plan_point);
    const bool can_go = removable(plan, group).size() > 0, can_move = movable(plan, group).size() > 0;
    const auto locked = [&](std::size_t piece) { return plan.ballast[piece].fixed; };
    cut->setEnabled(drawn && can_go);
    copy->setEnabled(drawn && group.size() > 0);
    // What the clipboard holds is looked at when it is wanted: to ask at each change may hold up the window.
    paste->setEnabled(drawn && some);
    select_all->setEnabled(drawn && ((canvas_.reach() == Reach::weight && !plan.ballast.empty()) ||
                                     (canvas_.reach() == Reach::wood && !plan.body.cuts.empty())));
    const bool drilled = is_done(plan, "drilled");
    duplicate->setEnabled(drawn && (drilled ? !group.pieces.empty() : group.size() > 0));
    remove->setEnabled(drawn && (can_go || (point && !is_done(plan, "sawn"))));
    lock->setEnabled(drawn && !group.pieces.empty());
    lock->setChecked(!group.pieces.empty() && std::all_of(group.pieces.begin(), group.pieces.end(), locked));
    add_point->setEnabled(drawn && point);
    corner_or_smooth->setEnabled(drawn && point);
    for (const auto& [action, least] : arranging_)
        action->setEnabled(drawn && group.size() >= least &&
                           (can_move || (action == mirror_copy_ && group.size() > 0)));
    arrange_->menuAction()->setEnabled(drawn && group.size() > 0);
}

} // namespace rampwright::ui

#include "drawing/canvas_access.hpp"

#include "drawing/car_canvas.hpp"
#include "text/corner_text.hpp"
#include "text/figure_text.hpp"

#include <QAccessibleWidget>
#include <QCoreApplication>
#include <QPointer>

#include <algorithm>
#include <memory>

namespace rampwright::ui {
namespace {

struct PartText {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::DrawnPart)
};

/// How large a part that is known by a point counts on the screen, px.
constexpr double grasp = 12;

/// One thing of the drawing. Fixed things cannot be chosen.
struct Part {
    QString name, where;
    View view = View::side;
    Vec3 at = Vec3::Zero();
    std::optional<Target> target;
};

QString place_text(const Session& session, const Vec3& at) {
    const UnitSystem units = session.project().units;
    return PartText::tr("%1 from the tail, %2 left of the middle, %3 above the wood's bottom")
        .arg(quantity_text(at.x(), Quantity::length, units), quantity_text(at.y(), Quantity::length, units),
             quantity_text(at.z(), Quantity::length, units));
}

/// What is drawn, in the order in which a reader comes to it: first what the car weighs on, then what can be
/// touched, each thing once, in the view that shows it first.
std::vector<Part> make_parts(const Session& session, Reach reach) {
    const CarPlan& plan = session.plan();
    const UnitSystem units = session.project().units;
    std::vector<Part> parts;
    if (const Figures* figures = session.figures()) {
        parts.push_back(
            {PartText::tr("Balance point"),
             PartText::tr("%1 ahead of the rear axle")
                 .arg(quantity_text(figures->balance_ahead_of_rear_axle, Quantity::length, units)),
             View::side,
             {plan.axles.rear_x + figures->balance_ahead_of_rear_axle, 0, plan.axles.rear_z},
             {}});
        parts.push_back({PartText::tr("Front load"),
                         quantity_text(figures->front_load, Quantity::mass, units),
                         View::side,
                         {plan.axles.front_x, 0, plan.axles.front_z},
                         {}});
    }
    for (const auto& wheel : make_car_shape(plan).wheels)
        parts.push_back({PartText::tr("Wheel %1").arg(corner_text(wheel.corner)),
                         wheel.touches ? PartText::tr("touches the track") : PartText::tr("raised"),
                         View::top,
                         wheel.centre,
                         {}});
    for (const View view : all_views)
        for (const Target& target : targets_in(plan, view, reach)) {
            if (target.kind == TargetKind::cut_corner)
                continue; // the cut itself has its place and its fields
            const bool known = std::any_of(parts.begin(), parts.end(),
                                           [&](const Part& part) { return part.target == target; });
            if (known) continue;
            const Vec3 at = anchor_of(plan, target, view);
            QString where = place_text(session, at);
            const QString stuck = why_stuck(plan, target);
            if (!stuck.isEmpty()) where += QStringLiteral("; ") + stuck;
            parts.push_back({name_of(plan, target), where, view, at, target});
        }
    return parts;
}

/// What is drawn now, made anew only when the document, the car on the sheet or the step in hand is another:
/// a reader asks many questions about each part.
class DrawnParts {
public:
    explicit DrawnParts(const CarCanvas& canvas) : canvas_(canvas) {}
    const std::vector<Part>& now() {
        const Session& session = canvas_.session();
        auto document = session.shared_document();
        if (document != document_ || session.car() != car_ || canvas_.reach() != reach_) {
            parts_ = make_parts(session, canvas_.reach());
            document_ = std::move(document);
            car_ = session.car();
            reach_ = canvas_.reach();
        }
        return parts_;
    }

private:
    const CarCanvas& canvas_;
    std::shared_ptr<const Document> document_;
    std::size_t car_ = 0;
    Reach reach_ = Reach::nothing;
    std::vector<Part> parts_;
};

/// The i-th part as it is now; a part that is gone is no longer valid.
class PartAccess final : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    PartAccess(CarCanvas& canvas, std::shared_ptr<DrawnParts> parts, std::size_t place)
        : canvas_(&canvas), parts_(std::move(parts)), place_(place) {}

    bool isValid() const override { return canvas_ && part(); }
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    QAccessibleInterface* parent() const override {
        return canvas_ ? QAccessible::queryAccessibleInterface(canvas_) : nullptr;
    }
    QAccessibleInterface* child(int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QString text(QAccessible::Text kind) const override {
        const Part* found = part();
        if (!found) return {};
        if (kind == QAccessible::Name) return found->name;
        return kind == QAccessible::Description ? found->where : QString();
    }
    void setText(QAccessible::Text, const QString&) override {}
    QRect rect() const override {
        const Part* found = part();
        if (!found) return {};
        const QPointF middle = canvas_->map().to_pixel(found->view, found->at);
        return {canvas_->mapToGlobal((middle - QPointF(grasp, grasp)).toPoint()),
                QSize(static_cast<int>(2 * grasp), static_cast<int>(2 * grasp))};
    }
    QAccessible::Role role() const override {
        const Part* found = part();
        return found && found->target ? QAccessible::ListItem : QAccessible::Graphic;
    }
    QAccessible::State state() const override {
        QAccessible::State state;
        const Part* found = part();
        if (!found) {
            state.invalid = true;
            return state;
        }
        state.selectable = state.focusable = found->target.has_value();
        const auto& chosen = canvas_->selection();
        state.multiSelectable = state.selectable;
        state.selected =
            found->target && std::find(chosen.begin(), chosen.end(), *found->target) != chosen.end();
        state.focused = canvas_->selected() == found->target && found->target && canvas_->hasFocus();
        state.invisible = !canvas_->isVisible();
        return state;
    }
    void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this)
                                                    : nullptr;
    }

    QStringList actionNames() const override {
        const Part* found = part();
        return found && found->target ? QStringList{pressAction(), setFocusAction()} : QStringList{};
    }
    void doAction(const QString&) override {
        const Part* found = part();
        if (!found || !found->target) return;
        const Target target = *found->target;
        canvas_->setFocus();
        canvas_->select(target);
    }
    QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
    /// Holds until the next change.
    const Part* part() const {
        if (!canvas_) return nullptr;
        const auto& parts = parts_->now();
        return place_ < parts.size() ? &parts[place_] : nullptr;
    }

    QPointer<CarCanvas> canvas_;
    std::shared_ptr<DrawnParts> parts_;
    std::size_t place_;
};

class DrawingAccess final : public QAccessibleWidget {
public:
    explicit DrawingAccess(CarCanvas& canvas)
        : QAccessibleWidget(&canvas, QAccessible::Canvas), parts_(std::make_shared<DrawnParts>(canvas)) {}
    ~DrawingAccess() override {
        for (const QAccessible::Id id : known_)
            QAccessible::deleteAccessibleInterface(id);
    }

    int childCount() const override { return static_cast<int>(parts_->now().size()); }
    QAccessibleInterface* child(int place) const override {
        if (place < 0 || place >= childCount()) return nullptr;
        while (known_.size() <= static_cast<std::size_t>(place))
            known_.push_back(
                QAccessible::registerAccessibleInterface(new PartAccess(canvas(), parts_, known_.size())));
        return QAccessible::accessibleInterface(known_[static_cast<std::size_t>(place)]);
    }
    int indexOfChild(const QAccessibleInterface* child) const override {
        for (std::size_t i = 0; i < known_.size(); ++i)
            if (QAccessible::accessibleInterface(known_[i]) == child) return static_cast<int>(i);
        return -1;
    }
    QAccessibleInterface* focusChild() const override {
        const auto& chosen = canvas().selected();
        if (!chosen || !canvas().hasFocus()) return nullptr;
        const auto& parts = parts_->now();
        for (std::size_t i = 0; i < parts.size(); ++i)
            if (parts[i].target == chosen) return child(static_cast<int>(i));
        return nullptr;
    }
    QAccessibleInterface* childAt(int x, int y) const override {
        for (int i = 0, count = childCount(); i < count; ++i)
            if (QAccessibleInterface* part = child(i); part->rect().contains(x, y)) return part;
        return nullptr;
    }

private:
    CarCanvas& canvas() const { return *static_cast<CarCanvas*>(widget()); }

    std::shared_ptr<DrawnParts> parts_;
    mutable std::vector<QAccessible::Id> known_; ///< made when first asked for
};

QAccessibleInterface* find_drawing(const QString&, QObject* object) {
    auto* canvas = qobject_cast<CarCanvas*>(object);
    return canvas ? new DrawingAccess(*canvas) : nullptr;
}

} // namespace

void make_accessible(CarCanvas& canvas) {
    QAccessible::installFactory(find_drawing); // the toolkit keeps each factory once
    QObject::connect(&canvas, &CarCanvas::selection_changed, &canvas, [&canvas] {
        if (!QAccessible::isActive()) return;
        auto* drawing = QAccessible::queryAccessibleInterface(&canvas);
        QAccessibleInterface* chosen = drawing ? drawing->focusChild() : nullptr;
        if (!chosen) return;
        QAccessibleEvent event(&canvas, QAccessible::Focus);
        event.setChild(drawing->indexOfChild(chosen));
        QAccessible::updateAccessibility(&event);
    });
}

} // namespace rampwright::ui

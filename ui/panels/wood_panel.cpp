#include "panels/wood_panel.hpp"

#include "drawing/car_canvas.hpp"
#include "drawing/drawing_actions.hpp"
#include "fields/quiet_combo_box.hpp"
#include "fields/value_editor.hpp"
#include "text/figure_text.hpp"

#include <QCheckBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace rampwright::ui {
namespace {

bool is_point(const Target& target) {
    return target.kind == TargetKind::profile_point || target.kind == TargetKind::plan_point;
}

bool is_cut(const Target& target) {
    return target.kind == TargetKind::cut || target.kind == TargetKind::cut_corner;
}

QPushButton* small_button(const QString& text, const char* name, QWidget* parent) {
    auto* button = new QPushButton(text, parent);
    button->setObjectName(QLatin1String(name));
    return button;
}

} // namespace

WoodPanel::WoodPanel(Session& session, CarCanvas& canvas, QWidget* parent)
    : QWidget(parent), session_(session), canvas_(canvas) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    list_ = new QListWidget(this);
    list_->setObjectName(QStringLiteral("wood.list"));
    list_->setAccessibleName(tr("Points of the outlines, pockets and bores"));
    list_->setWhatsThis(
        tr("What gives the wood its shape. Choose one to see its fields below; it is marked on "
           "the drawing too."));
    list_->setFixedHeight(104);
    list_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    canvas_.actions().serve(*list_);
    column->addWidget(list_);
    forms_ = new QStackedWidget(this);
    none_ = new QWidget(forms_);
    forms_->addWidget(none_);
    forms_->addWidget(point_form_ = make_point_form());
    forms_->addWidget(cut_form_ = make_cut_form());
    column->addWidget(forms_);
    problem_ = new QLabel(this);
    problem_->setWordWrap(true);
    problem_->hide();
    column->addWidget(problem_);
    connect(list_, &QListWidget::itemSelectionChanged, this, [this] {
        if (filling_) return;
        std::vector<Target> chosen;
        for (int row = 0; row < list_->count(); ++row)
            if (list_->item(row)->isSelected()) chosen.push_back(rows_[static_cast<std::size_t>(row)]);
        // A point is taken in hand alone.
        if (chosen.size() > 1) std::erase_if(chosen, [](const Target& each) { return is_point(each); });
        canvas_.select_these(std::move(chosen));
    });
    connect(&canvas_, &CarCanvas::selection_changed, this, &WoodPanel::refresh);
    connect(&session_, &Session::changed, this, &WoodPanel::refresh);
    connect(&session_, &Session::car_chosen, this, &WoodPanel::refresh);
    refresh();
}

QWidget* WoodPanel::make_point_form() {
    auto* form_widget = new QWidget(forms_);
    auto* form = new QFormLayout(form_widget);
    form->setContentsMargins(0, 0, 0, 0);
    form->setLabelAlignment(Qt::AlignLeft);
    at_label_ = new QLabel(form_widget);
    for (std::size_t i = 0; i < 2; ++i) {
        at_[i] = new ValueEditor(session_, form_widget);
        at_[i]->field()->setObjectName(QStringLiteral("point.at.%1").arg(i));
    }
    at_[0]->field()->setAccessibleName(tr("The point's distance from the tail"));
    form->addRow(tr("From the &tail"), at_[0]);
    at_label_->setBuddy(at_[1]);
    form->addRow(at_label_, at_[1]);
    smooth_ = new QCheckBox(tr("&Smooth curve through it"), form_widget);
    smooth_->setObjectName(QStringLiteral("point.smooth"));
    form->addRow(smooth_);
    auto* buttons = new QHBoxLayout;
    auto* add = small_button(tr("&Add After"), "point.add", form_widget);
    add->setToolTip(
        tr("A point more, midway to the next one. Insert does the same, and a double click on the line."));
    auto* remove = small_button(tr("&Remove"), "point.remove", form_widget);
    buttons->addWidget(add);
    buttons->addWidget(remove);
    form->addRow(buttons);
    connect(smooth_, &QCheckBox::clicked, &canvas_, &CarCanvas::toggle_smooth);
    connect(add, &QPushButton::clicked, &canvas_, &CarCanvas::add_point_after_selected);
    connect(remove, &QPushButton::clicked, &canvas_, &CarCanvas::remove_selected);
    return form_widget;
}

QWidget* WoodPanel::make_cut_form() {
    auto* form_widget = new QWidget(forms_);
    auto* grid = new QGridLayout(form_widget);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(4);
    name_ = new QLineEdit(form_widget);
    name_->setObjectName(QStringLiteral("cut.name"));
    name_->setAccessibleName(tr("Name of the cut"));
    auto* name_label = new QLabel(tr("&Name"), form_widget);
    name_label->setBuddy(name_);
    grid->addWidget(name_label, 0, 0);
    grid->addWidget(name_, 0, 1, 1, 2);
    grid->addWidget(new QLabel(tr("from"), form_widget), 1, 1);
    grid->addWidget(new QLabel(tr("to"), form_widget), 1, 2);
    const std::array<QString, 3> names{tr("From tail"), tr("To the left"), tr("Height")};
    for (int axis = 0; axis < 3; ++axis) {
        grid->addWidget(new QLabel(names[static_cast<std::size_t>(axis)], form_widget), 2 + axis, 0);
        for (int end = 0; end < 2; ++end) {
            auto* editor = new ValueEditor(session_, form_widget);
            editor->field()->setObjectName(QStringLiteral("cut.%1.%2")
                                               .arg(end == 0 ? QStringLiteral("from") : QStringLiteral("to"))
                                               .arg(axis));
            editor->field()->setAccessibleName((end == 0 ? tr("Cut from, %1") : tr("Cut to, %1"))
                                                   .arg(names[static_cast<std::size_t>(axis)]));
            editor->field()->setMinimumWidth(84);
            grid->addWidget(editor, 2 + axis, 1 + end);
            ends_[static_cast<std::size_t>(end)][static_cast<std::size_t>(axis)] = editor;
        }
    }
    diameter_ = new ValueEditor(session_, form_widget);
    diameter_->field()->setObjectName(QStringLiteral("cut.diameter"));
    diameter_->field()->setAccessibleName(tr("Diameter of the bore"));
    diameter_label_ = new QLabel(tr("&Diameter"), form_widget);
    diameter_label_->setBuddy(diameter_);
    grid->addWidget(diameter_label_, 5, 0);
    grid->addWidget(diameter_, 5, 1, 1, 2);
    tip_ = new QuietComboBox(form_widget);
    tip_->setObjectName(QStringLiteral("cut.end"));
    tip_->setAccessibleName(tr("How the bore ends"));
    tip_->addItems({tr("flat"), tr("drill's point")});
    tip_label_ = new QLabel(tr("&Ends"), form_widget);
    tip_label_->setBuddy(tip_);
    grid->addWidget(tip_label_, 6, 0);
    grid->addWidget(tip_, 6, 1, 1, 2);
    auto* buttons = new QHBoxLayout;
    auto* duplicate = small_button(tr("D&uplicate"), "cut.duplicate", form_widget);
    auto* remove = small_button(tr("&Remove"), "cut.remove", form_widget);
    buttons->addWidget(duplicate);
    buttons->addWidget(remove);
    grid->addLayout(buttons, 7, 0, 1, 3);
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(2, 1);
    connect(name_, &QLineEdit::editingFinished, this, [this] {
        const auto cut = cut_in_hand();
        if (!cut || !name_->isModified()) return;
        const std::string name = name_->text().trimmed().toStdString();
        attempt([&] {
            if (name.empty())
                throw Problem(Exit::could_not, "-", Core::tr("a cut needs a name"),
                              Core::tr("give it one: its weights go by it"));
            return rename_cut(session_.document(), session_.car(), *cut, name);
        });
    });
    connect(tip_, &QComboBox::activated, this, [this](int pointed) {
        if (const auto cut = cut_in_hand())
            attempt([&] { return set_cut_pointed(session_.document(), session_.car(), *cut, pointed == 1); });
    });
    connect(duplicate, &QPushButton::clicked, &canvas_, &CarCanvas::duplicate_selected);
    connect(remove, &QPushButton::clicked, &canvas_, &CarCanvas::remove_selected);
    return form_widget;
}

void WoodPanel::attempt(const std::function<Edit()>& make_edit) {
    try {
        session_.apply(make_edit());
        name_->setModified(false);
        problem_->hide();
    } catch (const Problem& problem) {
        problem_->setText(not_taken(plain_text(problem)));
        problem_->show();
    }
}

std::optional<std::size_t> WoodPanel::cut_in_hand() const {
    const auto& target = canvas_.selected();
    if (!target || !is_cut(*target) || target->index >= session_.plan().body.cuts.size()) return {};
    return target->index;
}

void WoodPanel::fill_list() {
    const CarPlan& plan = session_.plan();
    const UnitSystem units = session_.project().units;
    const auto length = [&](double si) { return quantity_text(si, Quantity::length, units); };
    rows_.clear();
    QStringList texts;
    const auto add_points = [&](const std::vector<PlanPoint>& points, TargetKind kind,
                                const QString& pattern) {
        for (std::size_t i = 0; i < points.size(); ++i) {
            rows_.push_back({kind, i, 0});
            texts << pattern.arg(i + 1).arg(length(points[i].at.x()), length(points[i].at.y()));
        }
    };
    for (std::size_t i = 0; i < plan.body.cuts.size(); ++i) {
        rows_.push_back({TargetKind::cut, i, 0});
        texts << QString::fromStdString(plan.body.cuts[i].name);
    }
    add_points(plan.body.profile, TargetKind::profile_point, tr("side point %1: %2, %3"));
    add_points(plan.body.plan, TargetKind::plan_point, tr("top point %1: %2, %3"));
    // Rows are reused: the list must not flicker while something is dragged.
    while (list_->count() > static_cast<int>(texts.size()))
        delete list_->takeItem(list_->count() - 1);
    for (int i = 0; i < static_cast<int>(texts.size()); ++i) {
        if (i == list_->count()) list_->addItem(new QListWidgetItem);
        if (list_->item(i)->text() != texts[i]) list_->item(i)->setText(texts[i]);
    }
}

void WoodPanel::refresh() {
    const QScopedValueRollback guard(filling_, true);
    fill_list();
    const auto is_chosen = [&](const Target& each) {
        return std::any_of(canvas_.selection().begin(), canvas_.selection().end(), [&](const Target& target) {
            const bool same_kind = each.kind == target.kind || (is_cut(each) && is_cut(target));
            return same_kind && each.index == target.index;
        });
    };
    int last = -1;
    for (int row = 0; row < list_->count(); ++row)
        if (is_chosen(rows_[static_cast<std::size_t>(row)])) last = row;
    // With several, the row that the keyboard goes on from stays.
    if (canvas_.selection().size() < 2) list_->setCurrentRow(last);
    for (int row = 0; row < list_->count(); ++row)
        list_->item(row)->setSelected(is_chosen(rows_[static_cast<std::size_t>(row)]));
    bind();
}

void WoodPanel::bind() {
    const auto& target = canvas_.selected();
    const auto& body = session_.plan().body;
    QWidget* form = none_;
    if (target && is_point(*target)) {
        const bool plan = target->kind == TargetKind::plan_point;
        if (target->index < (plan ? body.plan : body.profile).size()) {
            form = point_form_;
            bind_point(plan, target->index);
        }
    } else if (const auto cut = cut_in_hand()) {
        form = cut_form_;
        bind_cut(*cut);
    }
    if (forms_->currentWidget() != form) problem_->hide();
    forms_->setCurrentWidget(form);
    // The slip is no taller than what is in hand.
    for (int i = 0; i < forms_->count(); ++i)
        forms_->widget(i)->setSizePolicy(QSizePolicy::Preferred, forms_->widget(i) == form
                                                                     ? QSizePolicy::Preferred
                                                                     : QSizePolicy::Ignored);
    forms_->setVisible(form != none_);
    forms_->adjustSize();
}

void WoodPanel::bind_point(bool plan, std::size_t index) {
    at_label_->setText(plan ? tr("To the &left") : tr("Hei&ght"));
    at_[1]->field()->setAccessibleName(plan ? tr("The point's distance to the left of the centre line")
                                            : tr("The point's height above the bottom of the wood"));
    // A field may ask once more after an undo took its point away.
    const auto point = [this, plan, index]() -> PlanPoint {
        const auto& body = session_.plan().body;
        const auto& points = plan ? body.plan : body.profile;
        return index < points.size() ? points[index] : PlanPoint{};
    };
    for (int i = 0; i < 2; ++i)
        at_[static_cast<std::size_t>(i)]->field()->bind(
            PlanValue{(plan ? "plan/" : "profile/") + std::to_string(index) + "/" + std::to_string(i),
                      Quantity::length, [point, i] { return point().at[i]; },
                      [this, plan, index, point, i](double value) {
                          Vec2 to = point().at;
                          to[i] = value;
                          return move_outline_point(session_.document(), session_.car(), plan, index, to);
                      }});
    smooth_->setChecked(point().smooth);
}

void WoodPanel::bind_cut(std::size_t index) {
    const CutPlan& cut = session_.plan().body.cuts[index];
    const QString name = QString::fromStdString(cut.name);
    if (name_->text() != name && !(name_->hasFocus() && name_->isModified())) name_->setText(name);
    const std::string pointer =
        "/cars/" + std::to_string(session_.car()) + "/body/cuts/" + std::to_string(index);
    for (std::size_t axis = 0; axis < 3; ++axis)
        for (std::size_t end = 0; end < 2; ++end)
            ends_[end][axis]->field()->bind(pointer + (end == 0 ? "/from_mm/" : "/to_mm/") +
                                                std::to_string(axis),
                                            tr("place of %1").arg(name));
    for (QWidget* each : {static_cast<QWidget*>(diameter_), static_cast<QWidget*>(diameter_label_),
                          static_cast<QWidget*>(tip_), static_cast<QWidget*>(tip_label_)})
        each->setVisible(cut.is_bore);
    if (cut.is_bore)
        diameter_->field()->bind(pointer + "/diameter_mm", tr("diameter of %1").arg(name));
    else
        diameter_->field()->unbind();
    tip_->setCurrentIndex(cut.pointed ? 1 : 0);
}

} // namespace rampwright::ui

#include "panels/load_slip.hpp"

#include "drawing/car_canvas.hpp"
#include "drawing/drawing_actions.hpp"
#include "fields/holding_box.hpp"
#include "fields/quiet_combo_box.hpp"
#include "fields/value_editor.hpp"
#include "look/labels.hpp"
#include "look/theme.hpp"
#include "panels/scale_panel.hpp"
#include "panels/shelf_list.hpp"
#include "text/figure_text.hpp"
#include "text/said.hpp"

#include <rampwright/materials/materials.hpp>

#include <QCheckBox>
#include <QFormLayout>
#include <QLabel>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QVBoxLayout>

#include <algorithm>
#include <initializer_list>

namespace rampwright::ui {

LoadSlip::LoadSlip(Session& session, CarCanvas& canvas, QWidget* parent)
    : QWidget(parent), session_(session), canvas_(canvas) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    list_ = new QListWidget(this);
    list_->setObjectName(QStringLiteral("ballast.list"));
    list_->setAccessibleName(tr("Pieces of ballast"));
    list_->setWhatsThis(tr("The weights in this car. Choose one to see its fields below; it is marked on the "
                           "drawing too."));
    list_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    list_->setSizeAdjustPolicy(QAbstractScrollArea::AdjustToContents);
    list_->setMinimumHeight(64);
    list_->setMaximumHeight(150);
    list_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    canvas_.actions().serve(*list_);
    empty_ = new QLabel(tr("No ballast yet."), this);
    empty_->setForegroundRole(QPalette::PlaceholderText);
    column->addWidget(list_);
    column->addWidget(empty_);

    auto* form = new QFormLayout;
    form->setLabelAlignment(Qt::AlignLeft);
    mass_ = new ValueEditor(session_, this);
    mass_->field()->setObjectName(QStringLiteral("ballast.mass"));
    mass_->field()->setAccessibleName(tr("Mass of the piece"));
    mass_->setWhatsThis(tr("What the piece weighs. Type it in any unit: 28.4 g, 1 oz. Weigh it if you can."));
    form->addRow(tr("&Mass"), mass_);
    const std::array<QString, 3> names{tr("From the &tail"), tr("T&o the left"), tr("Hei&ght")};
    const std::array<QString, 3> why{tr("How far the middle of the piece is ahead of the tail."),
                                     tr("How far the middle of the piece is to the car's left of its centre "
                                        "line; negative is to the right."),
                                     tr("How far the middle of the piece is above the bottom of the wood.")};
    for (std::size_t axis = 0; axis < 3; ++axis) {
        at_[axis] = new ValueEditor(session_, this);
        at_[axis]->field()->setObjectName(QStringLiteral("ballast.at.%1").arg(axis));
        at_[axis]->field()->setAccessibleName(
            tr("Place of the piece, %1").arg(QString(names[axis]).remove(QLatin1Char('&'))));
        at_[axis]->setWhatsThis(why[axis]);
        at_[axis]->setToolTip(why[axis]);
        form->addRow(names[axis], at_[axis]);
    }
    in_ = new QuietComboBox(this);
    in_->setObjectName(QStringLiteral("ballast.in"));
    in_->setAccessibleName(tr("The cut the piece lies in"));
    in_->setToolTip(tr("Which pocket or bore holds it: what sticks out of that is told."));
    form->addRow(tr("Lies &in"), in_);
    connect(in_, &QComboBox::activated, this, [this](int row) {
        if (!piece_) return;
        const auto& cuts = session_.plan().body.cuts;
        const Json in = row == 0 ? Json() : Json(cuts.at(static_cast<std::size_t>(row) - 1).name);
        try {
            session_.apply(set_value(session_.document(), pointer() + "/in", in,
                                     tr("Choose what holds the ballast").toStdString()));
        } catch (const Problem& problem) {
            Q_EMIT canvas_.hint(plain_text(problem));
            bind();
        }
    });
    add_holding(*form);
    fixed_ = new QCheckBox(tr("Loc&ked in place"), this);
    fixed_->setObjectName(QStringLiteral("ballast.fixed"));
    fixed_->setWhatsThis(
        tr("A locked piece is not moved, neither by hand nor by the planner: for what is glued in."));
    form->addRow(fixed_);
    column->addLayout(form);

    auto* buttons = new QHBoxLayout;
    duplicate_ = new QPushButton(tr("D&uplicate"), this);
    remove_ = new QPushButton(tr("&Remove"), this);
    duplicate_->setObjectName(QStringLiteral("ballast.duplicate"));
    remove_->setObjectName(QStringLiteral("ballast.remove"));
    buttons->addWidget(duplicate_);
    buttons->addWidget(remove_);
    column->addLayout(buttons);

    column->addSpacing(8);
    column->addWidget(make_shelf());
    column->addWidget(new ScaleWords(session_, QStringLiteral("scale.words.load"), this));
    column->addStretch(1);

    connect(list_, &QListWidget::itemSelectionChanged, this, [this] {
        if (filling_) return;
        Group chosen;
        for (int row = 0; row < list_->count(); ++row)
            if (list_->item(row)->isSelected()) chosen.pieces.push_back(static_cast<std::size_t>(row));
        canvas_.select_these(targets_of(chosen));
    });
    connect(&canvas_, &CarCanvas::selection_changed, this, &LoadSlip::show_selection);
    connect(fixed_, &QCheckBox::clicked, &canvas_, &CarCanvas::lock_selected);
    connect(remove_, &QPushButton::clicked, &canvas_, &CarCanvas::remove_selected);
    connect(duplicate_, &QPushButton::clicked, &canvas_, &CarCanvas::duplicate_selected);
    connect(&session_, &Session::changed, this, &LoadSlip::refresh);
    connect(&session_, &Session::car_chosen, this, &LoadSlip::refresh);
    refresh();
}

void LoadSlip::add_holding(QFormLayout& form) {
    held_ = new HoldingBox(6, this);
    held_->setObjectName(QStringLiteral("ballast.held"));
    held_->setAccessibleName(tr("What holds the piece"));
    held_->setToolTip(tr("Glue, a screw, a plug: it weighs too."));
    connect(held_, &QComboBox::activated, this, &LoadSlip::choose_holding);
    held_mass_ = new ValueEditor(session_, this);
    held_mass_->field()->setObjectName(QStringLiteral("ballast.held_mass"));
    held_mass_->field()->setAccessibleName(tr("Mass of what holds the piece"));
    held_mass_->setToolTip(tr("What that weighs."));
    held_mass_->setWhatsThis(
        tr("What the glue, the screw or the plug weighs: weigh the car before and after. "
           "Left empty, what is typical counts, in grey."));
    held_mass_->field()->setMinimumWidth(84);
    held_mass_->setFixedWidth(84);
    auto* row = new QHBoxLayout;
    row->addWidget(held_, 1, Qt::AlignTop);
    row->addWidget(held_mass_);
    auto* label = new QLabel(tr("Held &by"), this);
    label->setBuddy(held_);
    form.addRow(label, row);
}

void LoadSlip::choose_holding() {
    if (!piece_) return;
    try {
        session_.apply(set_holding(session_.document(), session_.car(), *piece_, held_->holding()));
    } catch (const Problem& problem) {
        Q_EMIT canvas_.hint(plain_text(problem));
        bind();
    }
}

QWidget* LoadSlip::make_shelf() {
    auto* shelf = new QWidget(this);
    auto* column = new QVBoxLayout(shelf);
    column->setContentsMargins(0, 0, 0, 0);
    auto* title = heading_label(tr("From the &shelf"), shelf);
    shelf_ = new ShelfList(session_, shelf);
    shelf_->setMinimumHeight(150);
    title->setBuddy(shelf_);
    hint_ = new QLabel(tr("Drag a piece to the drawing, or click it and click there."), shelf);
    hint_->setWordWrap(true);
    hint_->setForegroundRole(QPalette::PlaceholderText);
    add_ = new QPushButton(tr("&Put in the Car"), shelf);
    add_->setObjectName(QStringLiteral("shelf.add"));
    add_->setWhatsThis(
        tr("Puts the chosen piece into the last pocket or bore, or on the wood midway between the "
           "axles where there is none. Then move it to its place."));
    column->addWidget(title);
    column->addWidget(hint_);
    column->addWidget(shelf_, 1);
    column->addWidget(add_);
    column->addWidget(make_household_button());
    connect(shelf_, &ShelfList::picked, &canvas_, &CarCanvas::carry);
    connect(shelf_, &ShelfList::wanted, this, &LoadSlip::put_in_car);
    connect(shelf_, &QListWidget::currentRowChanged, add_,
            [this] { add_->setEnabled(shelf_->chosen().has_value()); });
    connect(add_, &QPushButton::clicked, this, &LoadSlip::put_in_car);
    // What was laid back on the shelf, or down in the car, is no longer marked.
    connect(&canvas_, &CarCanvas::tool_changed, shelf_, [this](Tool tool) {
        if (tool != Tool::piece) shelf_->clearSelection();
    });
    return shelf;
}

QPushButton* LoadSlip::make_household_button() {
    auto* button = new QPushButton(tr("Washers, Nuts, Scre&ws"), this);
    button->setObjectName(QStringLiteral("shelf.household"));
    button->setToolTip(
        tr("Puts a household piece on the shelf, with a typical mass: weigh yours, ten at a time."));
    auto* menu = new QMenu(button);
    for (const HouseholdPiece& piece : household_pieces()) {
        const QString mass = quantity_text(piece.mass.value, Quantity::mass, session_.project().units);
        auto* action = menu->addAction(tr("%1, about %2").arg(said(piece.name), mass));
        action->setObjectName(QStringLiteral("household.") + QString::fromStdString(piece.id));
        connect(action, &QAction::triggered, this, [this, &piece] {
            try {
                session_.apply(add_household_piece(session_.document(), piece));
                Q_EMIT canvas_.hint(tr("A typical mass: weigh yours, ten at a time."));
            } catch (const Problem& problem) {
                Q_EMIT canvas_.hint(plain_text(problem));
            }
        });
    }
    button->setMenu(menu);
    return button;
}

void LoadSlip::put_in_car() {
    const auto shelf = shelf_->chosen();
    if (!shelf) return;
    canvas_.carry(*shelf);
    canvas_.use_tool_somewhere();
}

std::string LoadSlip::pointer() const {
    return "/cars/" + std::to_string(session_.car()) + "/ballast/" + std::to_string(*piece_);
}

void LoadSlip::show_selection() {
    const auto chosen = canvas_.group().pieces;
    piece_ = chosen.size() == 1 ? std::optional(chosen.front()) : std::nullopt;
    const QScopedValueRollback guard(filling_, true);
    // The row that the keyboard goes on from is one of them.
    if (piece_)
        list_->setCurrentRow(static_cast<int>(*piece_));
    else if (chosen.empty())
        list_->setCurrentRow(-1);
    for (int row = 0; row < list_->count(); ++row)
        list_->item(row)->setSelected(
            std::find(chosen.begin(), chosen.end(), static_cast<std::size_t>(row)) != chosen.end());
    bind();
}

void LoadSlip::bind() {
    const auto& ballast = session_.plan().ballast;
    const bool some = piece_ && *piece_ < ballast.size();
    auto chosen = canvas_.group().pieces;
    std::erase_if(chosen, [&](std::size_t piece) { return piece >= ballast.size(); });
    for (QWidget* each : std::initializer_list<QWidget*>{fixed_, duplicate_, remove_})
        each->setEnabled(!chosen.empty());
    for (QWidget* each : std::initializer_list<QWidget*>{in_, held_})
        each->setEnabled(some);
    fixed_->setChecked(!chosen.empty() && std::all_of(chosen.begin(), chosen.end(), [&](std::size_t piece) {
        return ballast[piece].fixed;
    }));
    if (!some) {
        mass_->field()->unbind();
        held_mass_->field()->unbind();
        held_->show_holding({});
        for (auto* each : at_)
            each->field()->unbind();
        in_->clear();
        return;
    }
    const auto& piece = session_.plan().ballast[*piece_];
    const QString name = QString::fromStdString(piece.name);
    mass_->field()->bind(pointer() + "/mass_g", tr("mass of %1").arg(name));
    for (std::size_t axis = 0; axis < 3; ++axis)
        at_[axis]->field()->bind(pointer() + "/at_mm/" + std::to_string(axis), tr("place of %1").arg(name));
    held_->show_holding(piece.held);
    held_mass_->field()->bind(pointer() + "/held_g", tr("mass of what holds %1").arg(name));
    QStringList cuts{tr("nothing")};
    int holder = 0;
    for (const CutPlan& cut : session_.plan().body.cuts) {
        if (cut.name == piece.in) holder = static_cast<int>(cuts.size());
        cuts << QString::fromStdString(cut.name);
    }
    QStringList shown;
    for (int i = 0; i < in_->count(); ++i)
        shown << in_->itemText(i);
    if (shown != cuts) {
        in_->clear();
        in_->addItems(cuts);
    }
    in_->setCurrentIndex(holder);
}

void LoadSlip::refresh() {
    const QScopedValueRollback guard(filling_, true);
    const auto& ballast = session_.plan().ballast;
    const auto units = session_.project().units;
    while (list_->count() > static_cast<int>(ballast.size()))
        delete list_->takeItem(list_->count() - 1);
    for (std::size_t i = 0; i < ballast.size(); ++i) {
        if (static_cast<int>(i) == list_->count()) list_->addItem(new QListWidgetItem);
        QString text = tr("%1, %2").arg(QString::fromStdString(ballast[i].name),
                                        quantity_text(ballast[i].mass, Quantity::mass, units));
        if (ballast[i].fixed) text = tr("%1, locked").arg(text);
        if (list_->item(static_cast<int>(i))->text() != text) list_->item(static_cast<int>(i))->setText(text);
    }
    list_->setVisible(!ballast.empty());
    empty_->setVisible(ballast.empty());
    add_->setEnabled(shelf_->chosen().has_value());
    show_selection();
}

} // namespace rampwright::ui

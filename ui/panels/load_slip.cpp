#include "panels/load_slip.hpp"

#include "drawing/snap.hpp"
#include "fields/quiet_combo_box.hpp"
#include "fields/value_editor.hpp"
#include "look/theme.hpp"
#include "panels/scale_panel.hpp"
#include "text/figure_text.hpp"

#include <QCheckBox>
#include <QFormLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QVBoxLayout>

namespace rampwright::ui {

LoadSlip::LoadSlip(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    list_ = new QListWidget(this);
    list_->setObjectName(QStringLiteral("ballast.list"));
    list_->setAccessibleName(tr("Pieces of ballast"));
    list_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    list_->setSizeAdjustPolicy(QAbstractScrollArea::AdjustToContents);
    list_->setMinimumHeight(64);
    list_->setMaximumHeight(150);
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
    const std::array<QString, 3> names{tr("From the &tail"), tr("To the l&eft"), tr("&Height")};
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
    fixed_ = new QCheckBox(tr("Loc&ked in place"), this);
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

    auto* shelf_title = new QLabel(tr("From the &shelf"), this);
    shelf_title->setFont(text_font(1.0, true));
    shelf_ = new QuietComboBox(this);
    shelf_->setObjectName(QStringLiteral("shelf"));
    shelf_->setAccessibleName(tr("Pieces on the shelf"));
    shelf_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    shelf_title->setBuddy(shelf_);
    add_ = new QPushButton(tr("&Put in the Car"), this);
    add_->setObjectName(QStringLiteral("shelf.add"));
    add_->setWhatsThis(
        tr("Puts one of these into the car, midway between the axles. Then drag it to its place."));
    column->addSpacing(8);
    column->addWidget(shelf_title);
    column->addWidget(shelf_);
    column->addWidget(add_);
    problem_ = new QLabel(this);
    problem_->setWordWrap(true);
    problem_->hide();
    column->addWidget(problem_);
    connect(add_, &QPushButton::clicked, this, &LoadSlip::add_from_shelf);
    column->addWidget(new ScaleWords(session_, QStringLiteral("scale.words.load"), this));
    column->addStretch(1);

    connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
        if (filling_) return;
        piece_ = row < 0 ? std::nullopt : std::optional(static_cast<std::size_t>(row));
        bind();
        Q_EMIT selected(piece_);
    });
    connect(fixed_, &QCheckBox::clicked, this, [this](bool fixed) {
        if (piece_)
            session_.apply(set_value(session_.document(), pointer() + "/fixed", fixed,
                                     (fixed ? tr("Lock ballast") : tr("Unlock ballast")).toStdString()));
    });
    connect(remove_, &QPushButton::clicked, this, [this] {
        if (piece_) session_.apply(remove_ballast(session_.document(), session_.car(), *piece_));
    });
    connect(duplicate_, &QPushButton::clicked, this, [this] {
        if (!piece_) return;
        Json piece = session_.document().root.at(Json::json_pointer(pointer()));
        // Beside the original, so that both can be seen.
        if (piece.contains("at_mm") && piece["at_mm"].is_array() && !piece["at_mm"].empty())
            piece["at_mm"][0] = piece["at_mm"][0].get<double>() + 5;
        session_.apply(add_ballast(session_.document(), session_.car(), piece));
        list_->setCurrentRow(list_->count() - 1);
    });
    connect(&session_, &Session::changed, this, &LoadSlip::refresh);
    connect(&session_, &Session::car_chosen, this, [this] {
        piece_.reset();
        refresh();
    });
    refresh();
}

void LoadSlip::show_shelf() {
    QStringList names;
    const auto& shelf = session_.project().shelf;
    for (const auto& piece : shelf)
        names << tr("%1, %2").arg(QString::fromStdString(piece.name),
                                  quantity_text(piece.mass, Quantity::mass, session_.project().units));
    QStringList shown;
    for (int i = 0; i < shelf_->count(); ++i)
        shown << shelf_->itemText(i);
    if (names != shown) {
        const int chosen = shelf_->currentIndex();
        shelf_->clear();
        shelf_->addItems(names);
        if (chosen >= 0 && chosen < shelf_->count()) shelf_->setCurrentIndex(chosen);
    }
    add_->setEnabled(shelf_->count() > 0);
}

void LoadSlip::add_from_shelf() {
    const int row = shelf_->currentIndex();
    const Json& list = session_.document().root.at("shelf");
    if (row < 0 || static_cast<std::size_t>(row) >= list.size()) return;
    Json piece = list[static_cast<std::size_t>(row)];
    piece.erase("count");
    const auto& plan = session_.plan();
    const Vec3 at((plan.axles.rear_x + plan.axles.front_x) / 2, 0, plan.body.block.z() / 4);
    piece["at_mm"] = {from_si(at.x(), *find_unit("mm")), 0.0, from_si(at.z(), *find_unit("mm"))};
    // Putty has no shape of its own: it fills a cut.
    if (piece.value("shape", std::string()) == "putty" && !plan.body.cuts.empty())
        piece["in"] = plan.body.cuts.front().name;
    try {
        session_.apply(add_ballast(session_.document(), session_.car(), piece));
        list_->setCurrentRow(list_->count() - 1);
        problem_->hide();
    } catch (const Problem& problem) {
        problem_->setText(problem_text(problem));
        problem_->show();
    }
}

std::string LoadSlip::pointer() const {
    return "/cars/" + std::to_string(session_.car()) + "/ballast/" + std::to_string(*piece_);
}

void LoadSlip::select(std::optional<std::size_t> piece) {
    if (piece == piece_) return;
    piece_ = piece;
    const QScopedValueRollback guard(filling_, true);
    list_->setCurrentRow(piece ? static_cast<int>(*piece) : -1);
    bind();
}

void LoadSlip::bind() {
    const bool some = piece_ && *piece_ < session_.plan().ballast.size();
    for (QWidget* each :
         {static_cast<QWidget*>(fixed_), static_cast<QWidget*>(duplicate_), static_cast<QWidget*>(remove_)})
        each->setEnabled(some);
    if (!some) {
        mass_->field()->unbind();
        for (auto* each : at_)
            each->field()->unbind();
        fixed_->setChecked(false);
        return;
    }
    const auto& piece = session_.plan().ballast[*piece_];
    const QString name = QString::fromStdString(piece.name);
    mass_->field()->bind(pointer() + "/mass_g", tr("mass of %1").arg(name));
    for (std::size_t axis = 0; axis < 3; ++axis)
        at_[axis]->field()->bind(pointer() + "/at_mm/" + std::to_string(axis), tr("place of %1").arg(name));
    fixed_->setChecked(piece.fixed);
}

void LoadSlip::refresh() {
    const QScopedValueRollback guard(filling_, true);
    const auto& ballast = session_.plan().ballast;
    const auto units = session_.project().units;
    if (piece_ && *piece_ >= ballast.size()) piece_.reset();
    while (list_->count() > static_cast<int>(ballast.size()))
        delete list_->takeItem(list_->count() - 1);
    for (std::size_t i = 0; i < ballast.size(); ++i) {
        if (static_cast<int>(i) == list_->count()) list_->addItem(new QListWidgetItem);
        QString text = tr("%1, %2").arg(QString::fromStdString(ballast[i].name),
                                        quantity_text(ballast[i].mass, Quantity::mass, units));
        if (ballast[i].fixed) text = tr("%1, locked").arg(text);
        if (list_->item(static_cast<int>(i))->text() != text) list_->item(static_cast<int>(i))->setText(text);
    }
    list_->setCurrentRow(piece_ ? static_cast<int>(*piece_) : -1);
    list_->setVisible(!ballast.empty());
    empty_->setVisible(ballast.empty());
    show_shelf();
    bind();
}

} // namespace rampwright::ui

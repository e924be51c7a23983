#include "panels/wood_choice.hpp"

#include "fields/quiet_combo_box.hpp"
#include "text/figure_text.hpp"
#include "text/said.hpp"

#include <rampwright/materials/materials.hpp>

#include <QCoreApplication>
#include <QFormLayout>
#include <QLabel>
#include <QSignalBlocker>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {

WoodChoice::WoodChoice(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    form->setLabelAlignment(Qt::AlignLeft);
    kind_ = new QuietComboBox(this);
    kind_->setObjectName(QStringLiteral("wood.kind"));
    kind_->setAccessibleName(tr("Kind of wood"));
    kind_->setToolTip(tr("Its density is the table's. Your own block weighed is better, and wins."));
    kind_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    kind_->setMinimumContentsLength(12);
    for (const Wood& wood : woods())
        kind_->addItem(said(wood.name), QString::fromStdString(wood.id));
    form->addRow(tr("&Kind of wood"), kind_);
    range_ = new QLabel(this);
    range_->setObjectName(QStringLiteral("wood.range"));
    range_->setWordWrap(true);
    range_->setForegroundRole(QPalette::PlaceholderText);
    form->addRow(range_);
    connect(kind_, &QComboBox::activated, this, &WoodChoice::choose);
    connect(&session_, &Session::changed, this, &WoodChoice::refresh);
    connect(&session_, &Session::car_chosen, this, &WoodChoice::refresh);
    refresh();
}

void WoodChoice::choose() {
    try {
        session_.apply(
            set_wood(session_.document(), session_.car(), kind_->currentData().toString().toStdString()));
    } catch (const Problem& problem) {
        Q_EMIT refused(plain_text(problem));
        refresh();
    }
}

void WoodChoice::refresh() {
    const BodyPlan& body = session_.plan().body;
    const Wood* wood = find_wood(body.wood);
    const QSignalBlocker blocker(kind_);
    kind_->setCurrentIndex(wood ? kind_->findData(QString::fromStdString(wood->id)) : -1);
    if (body.block_mass)
        range_->setText(tr("The weighed block counts: %1 kg/m³.").arg(std::round(body.density)));
    else if (body.density_sigma > 0)
        range_->setText(tr("Boards vary: two in three weigh %1 to %2 kg/m³. Weigh your block.")
                            .arg(std::round(body.density - body.density_sigma))
                            .arg(std::round(body.density + body.density_sigma)));
    else
        range_->setText(tr("The stated density counts: %1 kg/m³.").arg(std::round(body.density)));
}

} // namespace rampwright::ui

#include "trace/measure_dialog.hpp"

#include "text/figure_text.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/units/entry.hpp>

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace rampwright::ui {

MeasureDialog::MeasureDialog(double now, UnitSystem units, QWidget* parent) : QDialog(parent), units_(units) {
    setWindowTitle(tr("Scale of the Picture"));
    auto* column = new QVBoxLayout(this);
    auto* why = new QLabel(
        tr("As the picture lies now the two places are %1 apart. How far apart are they on the car?")
            .arg(quantity_text(now, Quantity::length, units)),
        this);
    why->setWordWrap(true);
    column->addWidget(why);
    auto* form = new QFormLayout;
    field_ = new QLineEdit(this);
    field_->setObjectName(QStringLiteral("measure.distance"));
    field_->setPlaceholderText(units == UnitSystem::metric ? tr("178, or 7 in") : tr("7, or 178 mm"));
    form->addRow(tr("&Distance"), field_);
    column->addLayout(form);
    level_ = new QCheckBox(tr("&Turn the picture so that they lie level"), this);
    level_->setObjectName(QStringLiteral("measure.level"));
    column->addWidget(level_);
    fault_ = new QLabel(this);
    fault_->setObjectName(QStringLiteral("measure.fault"));
    fault_->setWordWrap(true);
    fault_->hide();
    column->addWidget(fault_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &MeasureDialog::take);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    field_->setFocus();
}

bool MeasureDialog::level() const {
    return level_->isChecked();
}

void MeasureDialog::take() {
    try {
        distance_ = parse_entry(field_->text().toStdString(), Quantity::length, units_);
        if (!(distance_ > 0))
            throw Problem(Exit::could_not, "-", Core::tr("two places are farther apart than nothing"),
                          Core::tr("type the distance between them"));
        accept();
    } catch (const Problem& problem) {
        fault_->setText(not_taken(plain_text(problem)));
        fault_->show();
    }
}

} // namespace rampwright::ui

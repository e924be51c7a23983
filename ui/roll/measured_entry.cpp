#include "roll/measured_entry.hpp"

#include <rampwright/units/entry.hpp>
#include <rampwright/units/format.hpp>

#include <QHBoxLayout>
#include <QLabel>

namespace rampwright::ui {

Problem mend_reading(const QString& wrong, const QString& remedy) {
    return {Exit::could_not, "-", wrong.toStdString(), remedy.toStdString()};
}

MeasuredEntry::MeasuredEntry(Session& session, const QString& object_name, const QString& label,
                             Quantity quantity, const QString& why, QWidget* parent)
    : QWidget(parent),
      session_(session),
      quantity_(quantity),
      value_(new QLineEdit(this)),
      sigma_(new QLineEdit(this)) {
    value_->setObjectName(object_name);
    sigma_->setObjectName(object_name + QStringLiteral(".sigma"));
    value_->setWhatsThis(why);
    value_->setToolTip(why);
    sigma_->setWhatsThis(tr("The standard uncertainty of the reading: about two of three readings lie within "
                            "it. Empty for none."));
    setFocusProxy(value_);
    name(label);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(value_, 3);
    row->addWidget(new QLabel(QStringLiteral("±"), this));
    row->addWidget(sigma_, 2);
    for (QLineEdit* edit : {value_, sigma_}) {
        connect(edit, &QLineEdit::textEdited, this, [this] {
            typed_ = true;
            Q_EMIT changed();
        });
        connect(edit, &QLineEdit::editingFinished, this, &MeasuredEntry::finish);
    }
}

void MeasuredEntry::name(const QString& label) {
    value_->setAccessibleName(label);
    sigma_->setAccessibleName(tr("%1, uncertainty").arg(label));
}

void MeasuredEntry::show_value(const Measured& value) {
    const UnitSystem units = session_.project().units;
    put_text(*value_, QString::fromStdString(format_entry(value.value, quantity_, units)));
    put_text(*sigma_, QString::fromStdString(format_entry(value.sigma, quantity_, units)));
}

void MeasuredEntry::show_nothing() {
    put_text(*value_, {});
    put_text(*sigma_, {});
}

void MeasuredEntry::put_text(QLineEdit& edit, const QString& text) {
    // The same text set anew would move the cursor under a hand.
    if (!typed_ && edit.text() != text) edit.setText(text);
}

double MeasuredEntry::si(const QLineEdit& edit) const {
    return parse_entry(edit.text().trimmed().toStdString(), quantity_, session_.project().units);
}

void MeasuredEntry::finish() {
    if (!typed_) return;
    try {
        read();
    } catch (const EntryError&) {
        return; // The text stays to be mended; the result says what is wrong with it.
    }
    typed_ = false;
    Q_EMIT entered();
}

Measured MeasuredEntry::read() const {
    return {si(*value_), sigma_->text().trimmed().isEmpty() ? 0 : si(*sigma_)};
}

} // namespace rampwright::ui

#include "fields/value_field.hpp"

#include "fields/document_value.hpp"
#include "look/theme.hpp"
#include "text/figure_text.hpp"

#include <rampwright/units/entry.hpp>
#include <rampwright/units/format.hpp>

#include <QKeyEvent>
#include <QPainter>

namespace rampwright::ui {

ValueField::ValueField(Session& session, QWidget* parent) : QLineEdit(parent), session_(session) {
    setMinimumWidth(96);
    connect(this, &QLineEdit::editingFinished, this, &ValueField::commit);
    connect(&session_, &Session::changed, this, &ValueField::refresh);
    setEnabled(false);
}

void ValueField::bind(std::string pointer, const QString& name) {
    if (pointer == pointer_) return refresh();
    pointer_ = std::move(pointer);
    plan_value_ = {};
    name_ = name;
    setModified(false);
    setEnabled(true);
    refresh();
}

void ValueField::bind(PlanValue value) {
    if (value.id != plan_value_.id) setModified(false);
    plan_value_ = std::move(value);
    pointer_.clear();
    setEnabled(true);
    refresh();
}

void ValueField::unbind() {
    pointer_.clear();
    plan_value_ = {};
    setModified(false);
    set_fault({});
    clear();
    setPlaceholderText({});
    setEnabled(false);
}

void ValueField::refresh() {
    if (!bound() || isModified()) return;
    const UnitSystem units = session_.project().units;
    QString text;
    if (plan_value_.read) {
        text = QString::fromStdString(format_entry(plan_value_.read(), plan_value_.quantity, units));
    } else {
        const auto value = find_number(session_.document(), pointer_);
        if (value)
            text = QString::fromStdString(format_entry(*value, find_value_unit(pointer_).quantity, units));
        setPlaceholderText(value ? QString() : assumed_text(session_.project(), pointer_));
    }
    if (text != this->text()) setText(text);
    set_fault({});
}

Edit ValueField::edit_for(const std::string& typed) const {
    const UnitSystem units = session_.project().units;
    if (plan_value_.write) return plan_value_.write(parse_entry(typed, plan_value_.quantity, units));
    Json value;
    if (!typed.empty()) {
        const auto [quantity, unit] = find_value_unit(pointer_);
        const double si = parse_entry(typed, quantity, units);
        value = unit ? from_si(si, *unit) : si;
    }
    return set_value(session_.document(), pointer_, value, tr("Set %1").arg(name_).toStdString());
}

void ValueField::commit() {
    if (!bound() || !isModified()) return;
    try {
        const Edit edit = edit_for(text().trimmed().toStdString());
        setModified(false);
        session_.apply(edit);
        refresh();
    } catch (const Problem& problem) {
        setModified(true);
        set_fault(plain_text(problem));
    }
}

void ValueField::set_fault(const QString& fault) {
    if (fault == fault_) return;
    fault_ = fault;
    setAccessibleDescription(fault);
    update();
    Q_EMIT fault_changed(fault);
}

void ValueField::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && isModified()) {
        setModified(false);
        refresh();
        selectAll();
        return;
    }
    QLineEdit::keyPressEvent(event);
}

void ValueField::paintEvent(QPaintEvent* event) {
    QLineEdit::paintEvent(event);
    if (fault_.isEmpty()) return;
    QPainter painter(this);
    painter.setPen(QPen(theme().breach, 2));
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
}

} // namespace rampwright::ui

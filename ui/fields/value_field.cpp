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
    name_ = name;
    setModified(false);
    setEnabled(true);
    refresh();
}

void ValueField::unbind() {
    pointer_.clear();
    setModified(false);
    set_fault({});
    clear();
    setPlaceholderText({});
    setEnabled(false);
}

void ValueField::refresh() {
    if (pointer_.empty() || isModified()) return;
    const auto value = find_number(session_.document(), pointer_);
    const auto [quantity, unit] = find_value_unit(pointer_);
    const QString text =
        value ? QString::fromStdString(format_entry(*value, quantity, session_.project().units)) : QString();
    if (text != this->text()) setText(text);
    setPlaceholderText(value ? QString() : assumed_text(session_.project(), pointer_));
    set_fault({});
}

void ValueField::commit() {
    if (pointer_.empty() || !isModified()) return;
    try {
        Json value;
        const QString typed = text().trimmed();
        if (!typed.isEmpty()) {
            const auto [quantity, unit] = find_value_unit(pointer_);
            const double si = parse_entry(typed.toStdString(), quantity, session_.project().units);
            value = unit ? from_si(si, *unit) : si;
        }
        const Edit edit =
            set_value(session_.document(), pointer_, value, tr("Set %1").arg(name_).toStdString());
        setModified(false);
        session_.apply(edit);
        refresh();
    } catch (const Problem& problem) {
        setModified(true);
        const QString wrong = QString::fromStdString(problem.wrong()),
                      remedy = QString::fromStdString(problem.remedy());
        set_fault(remedy.isEmpty() ? wrong : tr("%1; %2").arg(wrong, remedy));
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

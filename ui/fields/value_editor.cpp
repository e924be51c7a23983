#include "fields/value_editor.hpp"

#include "text/figure_text.hpp"

#include <QLabel>
#include <QVBoxLayout>

namespace rampwright::ui {

ValueEditor::ValueEditor(Session& session, QWidget* parent)
    : QWidget(parent), field_(new ValueField(session, this)), message_(new QLabel(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(1);
    column->addWidget(field_);
    column->addWidget(message_);
    message_->setWordWrap(true);
    message_->hide();
    setFocusProxy(field_);
    connect(field_, &ValueField::fault_changed, this, [this](const QString& fault) {
        message_->setText(fault.isEmpty() ? QString() : not_taken(fault));
        message_->setVisible(!fault.isEmpty());
    });
}

} // namespace rampwright::ui

#include "panels/value_slip.hpp"

#include "fields/value_editor.hpp"
#include "look/labels.hpp"
#include "look/theme.hpp"

#include <QCoreApplication>
#include <QFormLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace rampwright::ui {
namespace {

QString translated(const char* text) {
    return QCoreApplication::translate("Fields", text);
}

} // namespace

ValueSlip::ValueSlip(Session& session, std::span<const FieldGroup> groups, QWidget* parent)
    : QWidget(parent), session_(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    for (const FieldGroup& group : groups) {
        auto* title = heading_label(translated(group.title), this);
        column->addWidget(title);
        auto* form = new QFormLayout;
        form->setContentsMargins(0, 0, 0, 10);
        form->setVerticalSpacing(4);
        form->setLabelAlignment(Qt::AlignLeft);
        for (const FieldSpec& spec : group.fields) {
            auto* editor = new ValueEditor(session_, this);
            editor->field()->setObjectName(QLatin1String(spec.pointer));
            const QString why = translated(spec.why), label = translated(spec.label);
            editor->setToolTip(why);
            editor->setWhatsThis(why);
            editor->field()->setWhatsThis(why); // a screen reader asks the field itself
            editor->field()->setAccessibleName(tr("%1, %2").arg(translated(group.title), label));
            form->addRow(label, editor);
            fields_.push_back({&spec, tr("%1: %2").arg(translated(group.title), label), editor});
        }
        column->addLayout(form);
    }
    column->addStretch(1);
    connect(&session_, &Session::changed, this, &ValueSlip::bind);
    connect(&session_, &Session::car_chosen, this, &ValueSlip::bind);
    bind();
}

void ValueSlip::bind() {
    for (const Bound& each : fields_) {
        if (const auto pointer = resolve_pointer(session_, each.spec->pointer))
            each.editor->field()->bind(*pointer, each.name);
        else
            each.editor->field()->unbind();
    }
}

} // namespace rampwright::ui

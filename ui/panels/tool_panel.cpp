#include "panels/tool_panel.hpp"

#include "drawing/car_canvas.hpp"
#include "fields/quiet_combo_box.hpp"
#include "text/figure_text.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/units/entry.hpp>
#include <rampwright/units/format.hpp>

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace rampwright::ui {

ToolPanel::ToolPanel(Session& session, CarCanvas& canvas, QWidget* parent)
    : QWidget(parent), session_(session), canvas_(canvas) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout;
    const auto add = [&](const QString& text, const char* name, Tool tool, const QString& why) {
        auto* button = new QPushButton(text, this);
        button->setObjectName(QLatin1String(name));
        button->setCheckable(true);
        button->setToolTip(why);
        button->setWhatsThis(why);
        connect(button, &QPushButton::clicked, this, [this, tool](bool on) {
            canvas_.set_tool(on ? tool : Tool::pick);
            show_tool(canvas_.tool());
            if (canvas_.tool() != Tool::pick) canvas_.setFocus();
        });
        row->addWidget(button);
        return button;
    };
    pocket_ =
        add(tr("Draw &Pocket"), "tool.pocket", Tool::pocket,
            tr("Drag a pocket from corner to corner in any view. From above and from the front it is cut "
               "10 mm deep (3/8 in), from the side right through."));
    bore_ =
        add(tr("Draw &Bore"), "tool.bore", Tool::bore,
            tr("Drag from where the drill goes in to where it stops. A click drills straight into the view: "
               "10 mm deep (3/8 in) from above and from the front, right through from the side."));
    column->addLayout(row);
    auto* form = new QFormLayout;
    form->setLabelAlignment(Qt::AlignLeft);
    bits_ = new QuietComboBox(this);
    bits_->setObjectName(QStringLiteral("tool.drill"));
    bits_->setEditable(true);
    bits_->setInsertPolicy(QComboBox::NoInsert);
    bits_->setAccessibleName(tr("Drill bit"));
    bits_->lineEdit()->setAccessibleName(tr("Diameter of the drill bit"));
    bits_->setToolTip(tr("The bits you own, or type another diameter."));
    form->addRow(tr("Dri&ll bit"), bits_);
    column->addLayout(form);
    fault_ = new QLabel(this);
    fault_->setWordWrap(true);
    fault_->hide();
    column->addWidget(fault_);
    connect(bits_, &QComboBox::activated, this, &ToolPanel::take_bit);
    connect(bits_->lineEdit(), &QLineEdit::editingFinished, this, &ToolPanel::take_bit);
    connect(&canvas_, &CarCanvas::tool_changed, this, &ToolPanel::show_tool);
    connect(&session_, &Session::changed, this, &ToolPanel::show_bits);
    show_bits();
}

void ToolPanel::show_tool(Tool tool) {
    pocket_->setChecked(tool == Tool::pocket);
    bore_->setChecked(tool == Tool::bore);
}

void ToolPanel::show_bits() {
    const UnitSystem units = session_.project().units;
    QStringList owned;
    for (const double bit : session_.project().tools.drill_bits)
        owned << QString::fromStdString(format_entry(bit, Quantity::length, units));
    QStringList shown;
    for (int i = 0; i < bits_->count(); ++i)
        shown << bits_->itemText(i);
    if (owned != shown) {
        bits_->clear();
        bits_->addItems(owned);
    }
    if (!bits_->lineEdit()->isModified())
        bits_->setEditText(QString::fromStdString(format_entry(canvas_.drill(), Quantity::length, units)));
}

void ToolPanel::take_bit() {
    try {
        const double diameter = parse_entry(bits_->currentText().trimmed().toStdString(), Quantity::length,
                                            session_.project().units);
        if (!(diameter > 0))
            throw Problem(Exit::could_not, "-", Core::tr("a drill bit has a diameter above zero"),
                          Core::tr("type another"));
        canvas_.set_drill(diameter);
        bits_->lineEdit()->setModified(false);
        fault_->hide();
        show_bits();
    } catch (const Problem& problem) {
        fault_->setText(not_taken(plain_text(problem)));
        fault_->show();
    }
}

} // namespace rampwright::ui

#include "panels/shape_slip.hpp"

#include "drawing/car_canvas.hpp"
#include "look/labels.hpp"
#include "look/theme.hpp"
#include "panels/shape_picker.hpp"
#include "panels/tool_panel.hpp"
#include "panels/value_slip.hpp"
#include "panels/wood_choice.hpp"
#include "panels/wood_panel.hpp"
#include "trace/underlay_panel.hpp"

#include <QLabel>
#include <QVBoxLayout>

namespace rampwright::ui {

ShapeSlip::ShapeSlip(Session& session, CarCanvas& canvas, QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& title, QWidget* part) {
        auto* label = heading_label(title, this);
        column->addWidget(label);
        column->addWidget(part);
        column->addSpacing(8);
    };
    add(tr("Cut into it"), new ToolPanel(session, canvas, this));
    add(tr("Points, pockets and bores"), new WoodPanel(session, canvas, this));
    auto* picker = new ShapePicker(session, this);
    add(tr("Start from a shape"), picker);
    connect(picker, &ShapePicker::refused, &canvas, &CarCanvas::hint);
    add(tr("Trace"), new UnderlayPanel(session, canvas, this));
    auto* wood = new WoodChoice(session, this);
    connect(wood, &WoodChoice::refused, &canvas, &CarCanvas::hint);
    column->addWidget(wood);
    column->addWidget(new ValueSlip(session, shape_fields(), this));
    column->addStretch(1);
}

} // namespace rampwright::ui

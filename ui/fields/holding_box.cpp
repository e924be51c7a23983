#include "fields/holding_box.hpp"

#include "text/said.hpp"

#include <rampwright/materials/materials.hpp>

#include <algorithm>

namespace rampwright::ui {

HoldingBox::HoldingBox(int characters, QWidget* parent) : QuietComboBox(parent) {
    addItem(tr("not planned"), QString());
    for (const Holding& holding : holdings())
        addItem(said(holding.name), QString::fromStdString(holding.id));
    setWhatsThis(tr("How the weight stays in its cut on a bumpy lane. What holds it weighs too."));
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(characters);
}

void HoldingBox::show_holding(const std::string& held) {
    setCurrentIndex(std::max(0, findData(QString::fromStdString(held))));
}

} // namespace rampwright::ui

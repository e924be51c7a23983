#pragma once

#include "fields/quiet_combo_box.hpp"

namespace rampwright::ui {

/// A choice of what holds a weight: none planned, or one of the table's holdings, by its id as data.
class HoldingBox : public QuietComboBox {
    Q_OBJECT

public:
    /// @param characters that are shown at least.
    HoldingBox(int characters, QWidget* parent);
    /// @param held id in the table of holdings; empty: not planned.
    void show_holding(const std::string& held);
    std::string holding() const { return currentData().toString().toStdString(); }
};

} // namespace rampwright::ui

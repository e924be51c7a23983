#pragma once

#include "session/session.hpp"

#include <QWidget>

#include <array>
#include <optional>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QListWidget;
class QPushButton;

namespace rampwright::ui {

class CarCanvas;
class HoldingBox;
class ShelfList;
class ValueEditor;

/// The slip of the step "Load": the pieces of ballast, the numbers of the one in hand, and the shelf they
/// come from. The lists are also the way to the drawn pieces without a mouse.
class LoadSlip : public QWidget {
    Q_OBJECT

public:
    LoadSlip(Session& session, CarCanvas& canvas, QWidget* parent = nullptr);

private:
    QWidget* make_shelf();
    QPushButton* make_household_button();
    void add_holding(QFormLayout& form);
    void choose_holding();
    void show_selection();
    void refresh();
    void bind();
    void put_in_car();
    std::string pointer() const;

    Session& session_;
    CarCanvas& canvas_;
    std::optional<std::size_t> piece_; ///< the one whose numbers are shown; none where several are chosen
    QListWidget* list_;
    QLabel *empty_, *hint_;
    ValueEditor *mass_, *held_mass_;
    std::array<ValueEditor*, 3> at_{};
    QCheckBox* fixed_;
    QComboBox* in_;
    HoldingBox* held_;
    QPushButton *duplicate_, *remove_, *add_;
    ShelfList* shelf_;
    bool filling_ = false;
};

} // namespace rampwright::ui

#pragma once

#include "session/session.hpp"

#include <QWidget>

class QComboBox;
class QLabel;
class QPushButton;

namespace rampwright::ui {

class CarCanvas;
enum class Tool;

/// The tools that cut: pocket or bore, and the drill bits the person owns.
class ToolPanel : public QWidget {
    Q_OBJECT

public:
    ToolPanel(Session& session, CarCanvas& canvas, QWidget* parent = nullptr);

private:
    void show_bits();
    void take_bit();
    void show_tool(Tool tool);

    Session& session_;
    CarCanvas& canvas_;
    QPushButton *pocket_, *bore_;
    QComboBox* bits_;
    QLabel* fault_;
};

} // namespace rampwright::ui

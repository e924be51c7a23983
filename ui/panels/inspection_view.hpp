#pragma once

#include "session/session.hpp"

#include <rampwright/rules/inspection.hpp>

#include <QWidget>

class QLabel;
class QTableWidget;

namespace rampwright::ui {

class CarCanvas;

/// The inspection list in full: every rule with its limit, what the car has, the room left, the verdict, how
/// it is looked at and where the rule is from. A row shows its place on the drawing.
class InspectionView : public QWidget {
    Q_OBJECT

public:
    InspectionView(Session& session, CarCanvas& drawing, QWidget* parent = nullptr);

private:
    void refresh();
    void fill_row(int row, const InspectionRow& line);
    void show_place(int row);

    Session& session_;
    CarCanvas& drawing_;
    QLabel *title_, *said_;
    QTableWidget* table_;
    std::optional<Inspection> shown_;
};

} // namespace rampwright::ui

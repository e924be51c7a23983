#pragma once

#include "session/session.hpp"

#include <QWidget>

#include <functional>

class QCheckBox;
class QComboBox;
class QLabel;
class QPlainTextEdit;
class QPushButton;
class QStackedWidget;

namespace rampwright::ui {

class LaneView;
class PieceTable;
class ValueEditor;

/// The lane: its picture, its shape by pieces or by measured points, its lines, how well it is known, and the
/// library to choose from.
class LanePage : public QWidget {
    Q_OBJECT

public:
    explicit LanePage(Session& session, QWidget* parent = nullptr);

private:
    QWidget* make_pieces();
    QWidget* make_points();
    QWidget* make_side();
    void refresh();
    void tell();
    void attempt(const std::function<Edit()>& edit);
    void take_points();
    void load_file();
    void save_file();

    Session& session_;
    LaneView* view_;
    PieceTable* pieces_ = nullptr;
    QStackedWidget* shape_ = nullptr;
    QPushButton *by_pieces_ = nullptr, *by_points_ = nullptr;
    QPlainTextEdit* points_ = nullptr;
    QLabel *residual_ = nullptr, *state_ = nullptr, *unknown_ = nullptr, *problem_ = nullptr;
    QCheckBox* guess_ = nullptr;
    QComboBox* library_ = nullptr;
    QWidget* sigmas_ = nullptr;
    QString refused_;
};

/// Rows of X and Z as people paste them: numbers with or without a unit, parted by spaces, tabs, semicolons
/// or a comma that is no decimal mark. @throws Problem naming the line that is none.
std::vector<Vec2> read_points(const QString& text, UnitSystem units);

} // namespace rampwright::ui

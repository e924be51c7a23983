#pragma once

#include "drawing/target.hpp"
#include "session/session.hpp"

#include <QWidget>

#include <array>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QStackedWidget;

namespace rampwright::ui {

class CarCanvas;
class ValueEditor;

/// What the wood is made of in numbers: every point of the outlines and every cut as a row, and the values of
/// the one in hand. It is also the way to them without a mouse.
class WoodPanel : public QWidget {
    Q_OBJECT

public:
    WoodPanel(Session& session, CarCanvas& canvas, QWidget* parent = nullptr);

private:
    QWidget* make_point_form();
    QWidget* make_cut_form();
    void refresh();
    void fill_list();
    void bind();
    void bind_point(bool plan, std::size_t index);
    void bind_cut(std::size_t index);
    std::optional<std::size_t> cut_in_hand() const;
    void attempt(const std::function<Edit()>& make_edit);

    Session& session_;
    CarCanvas& canvas_;
    std::vector<Target> rows_;
    QListWidget* list_;
    QStackedWidget* forms_;
    QWidget *none_, *point_form_, *cut_form_;
    std::array<ValueEditor*, 2> at_{};
    QLabel *at_label_, *problem_;
    QCheckBox* smooth_;
    QLineEdit* name_;
    std::array<std::array<ValueEditor*, 3>, 2> ends_{};
    ValueEditor* diameter_;
    QLabel *diameter_label_, *tip_label_;
    QComboBox* tip_;
    bool filling_ = false;
};

} // namespace rampwright::ui

#pragma once

#include "session/session.hpp"

#include <QWidget>

#include <array>
#include <optional>

class QCheckBox;
class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;

namespace rampwright::ui {

class ValueEditor;

/// The slip of the step "Load": the pieces of ballast, and the numbers of the one in hand. The list is
/// also the way to the drawn pieces without a mouse.
class LoadSlip : public QWidget {
    Q_OBJECT

public:
    explicit LoadSlip(Session& session, QWidget* parent = nullptr);
    void select(std::optional<std::size_t> piece);

Q_SIGNALS:
    void selected(std::optional<std::size_t> piece);

private:
    void refresh();
    void bind();
    void show_shelf();
    void add_from_shelf();
    std::string pointer() const;

    Session& session_;
    std::optional<std::size_t> piece_;
    QListWidget* list_;
    QLabel *empty_, *problem_;
    ValueEditor* mass_;
    std::array<ValueEditor*, 3> at_{};
    QCheckBox* fixed_;
    QPushButton *duplicate_, *remove_, *add_;
    QComboBox* shelf_;
    bool filling_ = false;
};

} // namespace rampwright::ui

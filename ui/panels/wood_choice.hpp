#pragma once

#include "session/session.hpp"

#include <QWidget>

class QComboBox;
class QLabel;

namespace rampwright::ui {

/// The block's kind of wood, from the table, and between which densities its boards lie.
class WoodChoice : public QWidget {
    Q_OBJECT

public:
    explicit WoodChoice(Session& session, QWidget* parent = nullptr);

Q_SIGNALS:
    /// Why a choice was not taken.
    void refused(const QString& why);

private:
    void choose();
    void refresh();

    Session& session_;
    QComboBox* kind_;
    QLabel* range_;
};

} // namespace rampwright::ui

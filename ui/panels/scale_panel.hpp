#pragma once

#include "session/session.hpp"

#include <QWidget>

class QComboBox;
class QLabel;

namespace rampwright::ui {

/// The race's scale, a worse one, and the putty for the last tenths of a gram, to be typed and chosen.
class ScaleFields : public QWidget {
    Q_OBJECT

public:
    explicit ScaleFields(Session& session, QWidget* parent = nullptr);

private:
    void refresh();

    Session& session_;
    QComboBox *reads_, *putty_;
};

/// What the scales say of the car on the sheet: what they read, what is left, the putty to have ready.
class ScaleWords : public QWidget {
    Q_OBJECT

public:
    /// @param name the object name of the words.
    ScaleWords(Session& session, const QString& name, QWidget* parent = nullptr);

private:
    void refresh();

    Session& session_;
    QLabel* words_;
};

} // namespace rampwright::ui

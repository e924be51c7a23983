#pragma once

#include <QComboBox>
#include <QWheelEvent>

namespace rampwright::ui {

/// A choice that the wheel passes over unless it is in use.
class QuietComboBox : public QComboBox {
public:
    explicit QuietComboBox(QWidget* parent = nullptr) : QComboBox(parent) { setFocusPolicy(Qt::StrongFocus); }

protected:
    void wheelEvent(QWheelEvent* event) override {
        if (hasFocus())
            QComboBox::wheelEvent(event);
        else
            event->ignore();
    }
};

} // namespace rampwright::ui

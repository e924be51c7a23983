#pragma once

#include "fields/value_field.hpp"

#include <QWidget>

class QLabel;

namespace rampwright::ui {

/// A value field with the words that say why its text is no value.
class ValueEditor : public QWidget {
    Q_OBJECT

public:
    ValueEditor(Session& session, QWidget* parent = nullptr);
    ValueField* field() const { return field_; }

private:
    ValueField* field_;
    QLabel* message_;
};

} // namespace rampwright::ui

#pragma once

#include <rampwright/project/project.hpp>

#include <QDialog>

class QCheckBox;
class QLabel;
class QLineEdit;

namespace rampwright::ui {

/// Asks how far apart two places of a picture are.
class MeasureDialog : public QDialog {
    Q_OBJECT

public:
    /// @param now their distance as the picture lies, m.
    MeasureDialog(double now, UnitSystem units, QWidget* parent = nullptr);
    double distance() const { return distance_; } ///< m
    bool level() const;

private:
    void take();

    UnitSystem units_;
    double distance_ = 0;
    QLineEdit* field_;
    QCheckBox* level_;
    QLabel* fault_;
};

} // namespace rampwright::ui

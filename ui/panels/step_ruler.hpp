#pragma once

#include <rampwright/project/job.hpp>

#include <QAbstractButton>
#include <QFrame>

#include <vector>

class QButtonGroup;

namespace rampwright::ui {

using Step = JobStep;

/// The job laid out as a ruler: one mark a step, the one in hand underlined, a decided one ticked.
class StepRuler : public QFrame {
    Q_OBJECT

public:
    explicit StepRuler(QWidget* parent = nullptr);
    /// Appends a step; only steps with something behind them are on the ruler.
    void add(Step step, const QString& name, const QString& why);
    void choose(Step step);
    void mark(Step step, bool decided);

Q_SIGNALS:
    void chosen(Step step);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QButtonGroup* group_;
};

/// One step's mark and name.
class StepButton : public QAbstractButton {
    Q_OBJECT

public:
    StepButton(const QString& name, QWidget* parent);
    QSize sizeHint() const override;
    /// A tick where it is decided, an empty ring where it is open: told apart by shape, and in words for
    /// those who do not see it.
    void set_decided(bool decided);
    bool decided() const { return decided_; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    bool decided_ = false;
};

} // namespace rampwright::ui

#pragma once

#include <QAbstractButton>
#include <QFrame>

#include <vector>

class QButtonGroup;

namespace rampwright::ui {

/// The order of the job.
enum class Step { agree, shape, roll, load, aim, run, paper };

/// The job laid out as a ruler: one mark a step, the one in hand underlined.
class StepRuler : public QFrame {
    Q_OBJECT

public:
    explicit StepRuler(QWidget* parent = nullptr);
    /// Appends a step; only steps with something behind them are on the ruler.
    void add(Step step, const QString& name, const QString& why);
    void choose(Step step);

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

protected:
    void paintEvent(QPaintEvent* event) override;
};

} // namespace rampwright::ui

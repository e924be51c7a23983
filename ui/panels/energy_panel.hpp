#pragma once

#include "session/session.hpp"

#include <QFrame>

#include <vector>

class QLabel;

namespace rampwright::ui {

class WhyButton;

/// A bar on a common scale; its length is also said in words beside it.
class EnergyBar : public QWidget {
    Q_OBJECT

public:
    explicit EnergyBar(QWidget* parent = nullptr);
    /// @param share of the whole width, 0 to 1; @param before where it stood, or negative.
    void set(double share, double before);
    QSize sizeHint() const override { return {160, 14}; }
    QSize minimumSizeHint() const override { return {60, 12}; }

Q_SIGNALS:
    void clicked();

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    double share_ = 0, before_ = -1;
};

/// Where the energy of the ramp goes: what is left as motion, and each loss as a bar.
class EnergyPanel : public QFrame {
    Q_OBJECT

public:
    explicit EnergyPanel(Session& session, QWidget* parent = nullptr);

private:
    struct Row {
        QLabel* name = nullptr;
        EnergyBar* bar = nullptr;
        QLabel* value = nullptr;
        WhyButton* why = nullptr;
    };
    void refresh();

    Session& session_;
    QLabel* summary_;
    std::vector<Row> rows_;
};

} // namespace rampwright::ui

#pragma once

#include "session/draws_job.hpp"

#include <QWidget>

class QGridLayout;
class QLabel;

namespace rampwright::ui {

class BellPlot;

/// How sure the predicted heat is, and what it would take to be surer: drawn heat times of the car on the
/// sheet, and each input's share of their variance (first-order Sobol index with its standard error).
class SpreadPanel : public QWidget {
    Q_OBJECT

public:
    explicit SpreadPanel(Session& session, QWidget* parent);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void ask(std::uint64_t seed);
    void refresh();
    void show_shares(const CarDraws& draws);

    Session& session_;
    DrawsJob job_;
    QLabel *heat_, *interval_;
    BellPlot* bells_;
    QWidget* results_;
    QGridLayout* shares_;
    const DrawsResult* shown_ = nullptr;
};

} // namespace rampwright::ui

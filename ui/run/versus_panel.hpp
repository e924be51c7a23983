#pragma once

#include "session/draws_job.hpp"

#include <QWidget>

class QComboBox;
class QLabel;

namespace rampwright::ui {

class BellPlot;
class DifferenceTable;
class RacePanel;

/// Two cars on one clock: the same draws for what they share, the chance of winning, the gap, both spreads on
/// one line, and the race itself to watch. Its numbers are those of `rampwright versus` with the same seed.
class VersusPanel : public QWidget {
    Q_OBJECT

public:
    explicit VersusPanel(Session& session, QWidget* parent);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void list_cars();
    void choose(bool second);
    void ask(std::uint64_t seed);
    void show_race();
    void refresh();

    Session& session_;
    DrawsJob job_;
    QComboBox *first_, *second_;
    QLabel *wins_, *gap_, *lead_;
    BellPlot* bells_;
    DifferenceTable* differences_;
    RacePanel* race_;
    QWidget* results_;
    const DrawsResult* shown_ = nullptr;
};

} // namespace rampwright::ui

#pragma once

#include "plots/mark_plot.hpp"
#include "session/session.hpp"

#include <QComboBox>
#include <QLabel>

namespace rampwright::ui {

/// The table of measured wheels as a picture: any column against another or against the order they stand in;
/// odd wheels and the four to take by the shape of their marks.
class WheelPlotView : public QWidget {
    Q_OBJECT

public:
    explicit WheelPlotView(Session& session, QWidget* parent = nullptr);

private:
    void refresh();
    void find_chosen();
    void show_plot();
    /// What a mark stands for, in words.
    QString told_of(std::size_t wheel, bool odd, bool take) const;

    Session& session_;
    QComboBox *across_, *up_;
    MarkPlot* plot_;
    QLabel* said_;
    std::vector<std::size_t> chosen_; ///< places in the table, none where no choice can be made
};

} // namespace rampwright::ui

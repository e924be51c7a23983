#pragma once

#include "roll/bench_table_view.hpp"

#include <array>
#include <optional>

namespace rampwright::ui {

/// The wheel bench: a table of measured wheels, what is odd about them, the four to take and where each
/// goes.
class WheelBenchView : public BenchTableView {
    Q_OBJECT

public:
    explicit WheelBenchView(Session& session, QWidget* parent = nullptr);

private:
    static Words words();
    void refresh() override;
    std::size_t count() const override { return session().project().bench_wheels.size(); }
    QStringList take(const std::string& text) override;
    void set_cell(std::size_t place, const QTableWidgetItem& item) override;
    void add_row() override;
    void remove_row(std::size_t place) override;
    void show_wheels();
    void show_choice();
    void fit_choice();

    QLabel* choice_;
    QPushButton* fit_;
    std::array<std::optional<std::size_t>, 4> chosen_; ///< bench wheel by corner
};

} // namespace rampwright::ui

#pragma once

#include "roll/bench_table_view.hpp"

namespace rampwright::ui {

/// The bench's axles: typed cell by cell or pasted, and which can stand for each other, the straight ones
/// first.
class AxleBenchView : public BenchTableView {
    Q_OBJECT

public:
    explicit AxleBenchView(Session& session, QWidget* parent = nullptr);

private:
    static Words words();
    void refresh() override;
    std::size_t count() const override { return session().project().bench_axles.size(); }
    QStringList take(const std::string& text) override;
    void set_cell(std::size_t place, const QTableWidgetItem& item) override;
    void add_row() override;
    void remove_row(std::size_t place) override;
    /// Puts the cursor on an axle, wherever its group has put it.
    void go_to(std::size_t place);

    QLabel* groups_;
};

} // namespace rampwright::ui

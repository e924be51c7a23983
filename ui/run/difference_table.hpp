#pragma once

#include "session/session.hpp"

#include <rampwright/study/compare_cars.hpp>

#include <QWidget>

#include <atomic>

class QLabel;
class QTableWidget;
class QTimer;

namespace rampwright::ui {

/// In what two cars differ, and what each difference alone is worth. Worked out beside the window's own
/// work, while somebody looks; a change stops what is under way.
class DifferenceTable : public QWidget {
    Q_OBJECT

public:
    explicit DifferenceTable(Session& session, QWidget* parent);
    ~DifferenceTable() override;
    /// The cars to compare.
    void want(std::size_t first, std::size_t second);
    /// Whether what is shown belongs to the project as it is.
    bool fresh() const { return shown_ == wanted_->load(); }

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void ask();
    void start();
    void fill(const CarComparison& comparison);
    void say(const QString& text);

    Session& session_;
    std::size_t first_ = 0, second_ = 0;
    QTimer* settle_;
    QLabel* said_;
    QTableWidget* table_;
    /// Counted up by every wish; a worker that holds an older count stops.
    std::shared_ptr<std::atomic<unsigned>> wanted_;
    unsigned shown_ = 0;
};

} // namespace rampwright::ui

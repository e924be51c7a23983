#pragma once

#include "session/draws_job.hpp"

#include <QWidget>

class QLabel;
class QProgressBar;
class QPushButton;

namespace rampwright::ui {

/// One line that says how the draws stand: how many and from which seed; or how far they are, with a button
/// that stops them; or that they were stopped, with a button that begins again.
class DrawsBar : public QWidget {
    Q_OBJECT

public:
    DrawsBar(DrawsJob& job, QWidget* parent);

Q_SIGNALS:
    /// The person wants the draws again: the same ones, or, where they are there, others.
    void asked(std::uint64_t seed);

private:
    void refresh();
    DrawsJob& job_;
    QLabel* said_;
    QProgressBar* progress_;
    QPushButton *cancel_, *again_;
};

} // namespace rampwright::ui

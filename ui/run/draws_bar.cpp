#include "run/draws_bar.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QProgressBar>
#include <QPushButton>

#include <algorithm>

namespace rampwright::ui {

DrawsBar::DrawsBar(DrawsJob& job, QWidget* parent)
    : QWidget(parent),
      job_(job),
      said_(new QLabel(this)),
      progress_(new QProgressBar(this)),
      cancel_(new QPushButton(tr("&Cancel"), this)),
      again_(new QPushButton(this)) {
    said_->setObjectName(QStringLiteral("draws.said"));
    said_->setForegroundRole(QPalette::PlaceholderText);
    progress_->setObjectName(QStringLiteral("draws.progress"));
    progress_->setAccessibleName(tr("Draws done"));
    progress_->setRange(0, 100);
    progress_->setTextVisible(false);
    progress_->setFixedSize(140, 10);
    cancel_->setObjectName(QStringLiteral("draws.cancel"));
    cancel_->setToolTip(tr("Stops the draws; nothing else waits for them"));
    again_->setObjectName(QStringLiteral("draws.again"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(said_);
    row->addStretch(1);
    row->addWidget(progress_);
    row->addWidget(cancel_);
    row->addWidget(again_);
    connect(cancel_, &QPushButton::clicked, &job_, &DrawsJob::cancel);
    connect(again_, &QPushButton::clicked, this, [this] {
        Q_EMIT asked(job_.state() == DrawsJob::State::done ? job_.seed() + 1
                                                           : std::max<std::uint64_t>(job_.seed(), 1));
    });
    connect(&job_, &DrawsJob::changed, this, &DrawsBar::refresh);
    refresh();
}

void DrawsBar::refresh() {
    using State = DrawsJob::State;
    const State state = job_.state();
    const bool busy = state == State::running || state == State::waiting;
    progress_->setVisible(busy);
    cancel_->setVisible(busy);
    progress_->setValue(state == State::running ? static_cast<int>(100 * job_.progress()) : 0);
    again_->setVisible(!busy && state != State::idle);
    again_->setText(state == State::done ? tr("Other &Draws") : tr("&Draw Again"));
    again_->setToolTip(state == State::done ? tr("The same question with other chances: if the answer moves, "
                                                 "it was not sure in that digit")
                                            : QString());
    switch (state) {
    case State::idle:
        said_->clear();
        break;
    case State::waiting:
    case State::running:
        said_->setText(tr("Drawing heats…"));
        break;
    case State::done:
        said_->setText(tr("%L1 heats drawn, seed %2")
                           .arg(job_.result()->draws.cars.front().heat.size())
                           .arg(job_.seed()));
        break;
    case State::cancelled:
        said_->setText(tr("Stopped. Nothing is shown of draws that were not finished."));
        break;
    case State::failed:
        said_->setText(job_.problem());
        break;
    }
}

} // namespace rampwright::ui

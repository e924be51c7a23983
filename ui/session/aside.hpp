#pragma once

#include <QCoreApplication>
#include <QPointer>
#include <QThreadPool>

#include <utility>

namespace rampwright::ui {

/// Works something out on another thread and hands it to `done` on the window's, if `owner` is still there.
/// `work` must not throw and must touch nothing that the window does.
template <class Work, class Done>
void work_aside(QObject* owner, Work work, Done done) {
    QThreadPool::globalInstance()->start(
        [work = std::move(work), done = std::move(done), owner = QPointer<QObject>(owner)]() mutable {
            auto result = work();
            QMetaObject::invokeMethod(
                qApp,
                [result = std::move(result), done = std::move(done), owner]() mutable {
                    if (owner) done(std::move(result));
                },
                Qt::QueuedConnection);
        });
}

} // namespace rampwright::ui

#include "session/draws_job.hpp"
#include "ui/support/bench.hpp"

#include <QApplication>
#include <QElapsedTimer>
#include <QLabel>
#include <QMouseEvent>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include <algorithm>
#include <bench/bench.hpp>
#include <stdexcept>

using namespace rampwright;
using namespace rampwright::ui;

namespace {

/// The toolkit, off screen, with settings of its own.
struct Toolkit {
    Toolkit() {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        QSettings::setDefaultFormat(QSettings::IniFormat);
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
        application = std::make_unique<QApplication>(count, words);
    }
    QTemporaryDir settings;
    int count = 1;
    char name[17] = "rampwright-bench";
    char* words[2] = {name, nullptr};
    std::unique_ptr<QApplication> application;
};

/// It is never taken down: the toolkit's own statics may be gone by then.
void start_toolkit() {
    static const Toolkit* const toolkit = new Toolkit;
    (void)toolkit;
}

/// Counts the paintings of a widget.
class Paintings : public QObject {
public:
    int count = 0;
    bool eventFilter(QObject*, QEvent* event) override {
        count += event->type() == QEvent::Paint;
        return false;
    }
};

bench::Result drag_frame() {
    start_toolkit();
    testing::Workbench window;
    CarCanvas& drawing = window.drawing();
    Paintings drawn, told;
    drawing.installEventFilter(&drawn);
    window.find<QLabel>(QStringLiteral("answer.front_load")).installEventFilter(&told);

    constexpr int steps = 500;
    const QPoint from = testing::pixel_of_piece(window, 0, View::side);
    QTest::mousePress(&drawing, Qt::LeftButton, {}, from);
    std::vector<double> frames;
    for (int n = 0; n < steps; ++n) {
        // To and fro by half an inch or so, a pixel a step.
        const QPoint at = from - QPoint(std::abs(n % 60 - 30), 0);
        QMouseEvent move(QEvent::MouseMove, at, drawing.mapToGlobal(at), Qt::NoButton, Qt::LeftButton, {});
        const int before = drawn.count;
        frames.push_back(bench::seconds([&] {
            QApplication::sendEvent(&drawing, &move);
            for (int looks = 0; drawn.count == before && looks < 1000; ++looks)
                QApplication::processEvents(QEventLoop::AllEvents, 10);
        }));
    }
    QTest::mouseRelease(&drawing, Qt::LeftButton, {}, from);
    // A figure whose digits stay is not painted again.
    if (drawn.count < steps || told.count < steps / 4)
        throw std::runtime_error("drawing painted " + std::to_string(drawn.count) + " times, figures " +
                                 std::to_string(told.count));
    std::sort(frames.begin(), frames.end());
    return {frames[frames.size() * 99 / 100] * 1e3, "ms",
            "99th percentile of 500 steps of a dragged weight, from the mouse's event to drawing and figures "
            "painted, offscreen; median " +
                bench::digits(frames[frames.size() / 2] * 1e3, 3) + " ms"};
}

bench::Result longest_wait() {
    start_toolkit();
    testing::Workbench window;
    DrawsJob job(window.session);
    QElapsedTimer since;
    double longest = 0;
    int looks = 0;
    QTimer pulse;
    pulse.setTimerType(Qt::PreciseTimer);
    pulse.setInterval(1);
    QObject::connect(&pulse, &QTimer::timeout, [&] {
        if (looks++ > 0) longest = std::max(longest, double(since.nsecsElapsed()) * 1e-6);
        since.start();
    });
    QTest::qWait(200); // the window's own first work is over
    job.want({0, 1}, 10000, 1);
    pulse.start();
    if (!QTest::qWaitFor([&] { return job.state() == DrawsJob::State::done; }, 60000))
        throw std::runtime_error("the draws did not end");
    return {
        longest, "ms",
        "longest time between two looks at the event queue, a pulse each millisecond, while 10000 draws of "
        "two cars run; " +
            std::to_string(looks) + " looks"};
}

const bench::Registered frame_bench{"drag-frame-p99", drag_frame};
const bench::Registered wait_bench{"longest-wait-during-draws", longest_wait};

} // namespace

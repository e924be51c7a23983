#include "run/race_panel.hpp"
#include "session/draws_job.hpp"
#include "support/bench.hpp"

#include <rampwright/project/edits.hpp>

#include <QAbstractButton>
#include <QComboBox>
#include <QElapsedTimer>
#include <QLabel>
#include <QProcess>
#include <QPushButton>
#include <QRegularExpression>
#include <QSlider>
#include <QStackedWidget>
#include <QTabBar>
#include <QTest>
#include <QToolButton>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

constexpr int draws_ms = 60000; ///< a loaded machine is slow; a good one needs half a second

/// Clicks the step and the tab as a person does.
QWidget& open_run_tab(Workbench& bench, const QString& name) {
    auto& step = bench.find<QAbstractButton>(QStringLiteral("step.%1").arg(static_cast<int>(Step::run)));
    QTest::mouseClick(&step, Qt::LeftButton);
    auto& tabs = bench.find<QTabBar>(QStringLiteral("run-sheet.tabs"));
    auto& pages = *bench.find<QWidget>(QStringLiteral("run-sheet")).findChild<QStackedWidget*>();
    for (int i = 0; i < tabs.count(); ++i)
        if (tabs.tabText(i) == name) {
            QTest::mouseClick(&tabs, Qt::LeftButton, {}, tabs.tabRect(i).center());
            return *pages.widget(i);
        }
    throw std::runtime_error("no tab " + name.toStdString());
}

QWidget& open_versus(Workbench& bench) {
    return open_run_tab(bench, QStringLiteral("Two Cars, One Clock"));
}

template <class Widget>
Widget& in(QWidget& panel, const char* name) {
    auto* found = panel.findChild<Widget*>(QLatin1String(name));
    if (!found) throw std::runtime_error(std::string("no ") + name);
    return *found;
}

void wait_until_drawn(QWidget& panel) {
    auto& job = in<DrawsJob>(panel, "");
    REQUIRE(QTest::qWaitFor([&] { return job.state() == DrawsJob::State::done; }, draws_ms));
}

/// What `rampwright versus` prints after a label of its table.
QString printed(const QString& output, const QString& label) {
    const QRegularExpression line(label + QStringLiteral("\\s+(.+)$"), QRegularExpression::MultilineOption);
    return line.match(output).captured(1).trimmed();
}

} // namespace

TEST_CASE("Two cars on one clock: the screen says what the command line says", "[versus]") {
    Workbench bench;
    QWidget& panel = open_versus(bench);
    // By keyboard: another second car.
    auto& second = in<QComboBox>(panel, "versus.second");
    second.setFocus();
    QTest::keyClick(&second, Qt::Key_Down);
    wait_until_drawn(panel);
    const QString first_name = in<QComboBox>(panel, "versus.first").currentText();

    QProcess program;
    program.start(QStringLiteral(RAMPWRIGHT_PROGRAM),
                  {QStringLiteral("versus"), QString::fromStdString(demo_path), QStringLiteral("--car"),
                   first_name, QStringLiteral("--car"), second.currentText()});
    REQUIRE(program.waitForFinished(draws_ms));
    const QString output = QString::fromUtf8(program.readAllStandardOutput());
    const QString gap = printed(output, QStringLiteral("is faster by"));
    const QString wins = printed(output, QStringLiteral("it wins one heat"));
    const QString better = printed(output, QStringLiteral("it is the faster car"));
    const QString lead = printed(output, QStringLiteral("at the finish it leads by"));
    REQUIRE(!gap.isEmpty());
    CHECK(in<QLabel>(panel, "versus.wins").text() ==
          QStringLiteral("%1 wins %2 of the heats").arg(first_name, wins));
    const auto ahead = [&](const QString& signed_amount) {
        return signed_amount.startsWith(QChar(0x2212)) ? second.currentText() : first_name;
    };
    const auto amount = [](QString text) { return text.remove(QChar(0x2212)); };
    const QString gap_of = gap.section(QLatin1Char(','), 0, 0), sigma = gap.section(QLatin1Char(','), 1);
    CHECK(in<QLabel>(panel, "versus.gap").text() ==
          QStringLiteral("%1 is faster by %2,%3; %4 is the faster car in %5 of the draws.")
              .arg(ahead(gap_of), amount(gap_of), sigma, first_name, better));
    CHECK(in<QLabel>(panel, "versus.lead").text() ==
          QStringLiteral("At the finish %1 leads by %2.").arg(ahead(lead), amount(lead)));

    // The race ends on that same picture.
    auto& slider = in<QSlider>(panel, "race.time");
    slider.setFocus();
    QTest::keyClick(&slider, Qt::Key_End);
    CHECK(in<QLabel>(panel, "race.said")
              .text()
              .endsWith(QStringLiteral("%1 leads by %2").arg(ahead(lead), amount(lead))));

    // Other draws: another seed, and the answer stays near.
    auto& again = in<QPushButton>(panel, "draws.again");
    const QString said = in<QLabel>(panel, "draws.said").text();
    QTest::mouseClick(&again, Qt::LeftButton);
    wait_until_drawn(panel);
    CHECK(in<QLabel>(panel, "draws.said").text() != said);
}

TEST_CASE("Draws run beside the window, are cancelled at once, and begin anew after a change", "[versus]") {
    Workbench bench;
    QWidget& panel = open_versus(bench);
    auto& job = in<DrawsJob>(panel, "");
    auto& cancel = in<QPushButton>(panel, "draws.cancel");
    REQUIRE(QTest::qWaitFor([&] { return cancel.isVisible(); }, 5000));
    QTest::mouseClick(&cancel, Qt::LeftButton);
    CHECK(job.state() == DrawsJob::State::cancelled);
    CHECK(job.result() == nullptr);
    CHECK(in<QLabel>(panel, "versus.wins").text() == QStringLiteral("–"));

    QTest::mouseClick(&in<QPushButton>(panel, "draws.again"), Qt::LeftButton);
    wait_until_drawn(panel);
    const QString before = in<QLabel>(panel, "versus.gap").text();
    CHECK(in<QLabel>(panel, "versus.gap").isEnabled());

    // A change makes what is shown pale at once; while something is dragged nothing is drawn.
    auto& session = bench.session;
    session.begin_gesture();
    const auto there = session.plan().ballast.at(0).at;
    session.preview(move_ballast(session.gesture_base(), session.car(), 0, there + Vec3(-4e-3, 0, 0)));
    CHECK(!in<QLabel>(panel, "versus.gap").isEnabled());
    QTest::qWait(600);
    CHECK(job.state() == DrawsJob::State::waiting);
    session.finish_gesture();
    wait_until_drawn(panel);
    CHECK(in<QLabel>(panel, "versus.gap").isEnabled());
    CHECK(in<QLabel>(panel, "versus.gap").text() != before);

    // Out of sight nothing is drawn.
    auto& load = bench.find<QAbstractButton>(QStringLiteral("step.%1").arg(static_cast<int>(Step::load)));
    QTest::mouseClick(&load, Qt::LeftButton);
    CHECK(job.state() == DrawsJob::State::idle);
}

TEST_CASE("A race is watched, held, scrubbed and slowed", "[versus]") {
    Workbench bench;
    QWidget& panel = open_versus(bench);
    auto& race = in<RacePanel>(panel, "race");
    auto& play = in<QToolButton>(panel, "race.play");
    auto& slider = in<QSlider>(panel, "race.time");
    REQUIRE(race.race() != nullptr);
    CHECK(race.time() == 0);
    CHECK(in<QLabel>(panel, "race.said").text().endsWith(QStringLiteral("side by side")));

    QTest::mouseClick(&play, Qt::LeftButton);
    REQUIRE(QTest::qWaitFor([&] { return race.time() > 0.2; }, 10000));
    QTest::mouseClick(&play, Qt::LeftButton);
    const double held = race.time();
    QTest::qWait(100);
    CHECK(race.time() == held);
    CHECK(slider.value() == static_cast<int>(std::lround(held * 1000)));

    // At a quarter of the speed never more than a quarter of the time that passes.
    QTest::mouseClick(&in<QAbstractButton>(panel, "race.slow"), Qt::LeftButton, {}, {8, 8});
    REQUIRE(in<QAbstractButton>(panel, "race.slow").isChecked());
    QElapsedTimer clock;
    clock.start();
    QTest::mouseClick(&play, Qt::LeftButton);
    QTest::qWait(400);
    QTest::mouseClick(&play, Qt::LeftButton);
    CHECK(race.time() - held > 0);
    CHECK(race.time() - held <= 0.25e-3 * double(clock.elapsed()) + 1e-3);

    // By keyboard: a tenth of a second.
    const int from = slider.value();
    slider.setFocus();
    QTest::keyClick(&slider, Qt::Key_PageUp);
    CHECK(slider.value() == from + 100);
    CHECK(race.time() == Approx((from + 100) * 1e-3));
    // A car stands with its wheels on the lane, wherever it is.
    for (const double time : {0.0, 0.6, 1.3, race.race()->duration()}) {
        const auto& shape = race.race()->shape(0);
        const QPointF foot =
            race.race()->stand(0, time).map(QPointF(shape.ground[0].x(), shape.ground[0].y()));
        double nearest = 1;
        const Track& track = race.race()->track();
        for (double s = 0; s < track.length(); s += 1e-3) {
            const auto at = track.point(s).at;
            nearest = std::min(nearest, std::hypot(at.real() - foot.x(), at.imag() - foot.y()));
        }
        CHECK(nearest < 0.6e-3);
    }
}

TEST_CASE("What a prediction is unsure of is listed by human names", "[versus]") {
    Workbench bench;
    QWidget& panel = open_run_tab(bench, QStringLiteral("How Sure"));
    wait_until_drawn(panel);
    CHECK(in<QLabel>(panel, "spread.heat").text().contains(QStringLiteral("±")));
    const auto& shares = in<DrawsJob>(panel, "").result()->draws.cars.front().shares;
    REQUIRE(!shares.empty());
    double last = 2;
    int shown = 0;
    for (const auto& share : shares) {
        auto* label = panel.findChild<QLabel*>(QStringLiteral("share.") + QString::fromStdString(share.key));
        if (!label) continue;
        ++shown;
        CHECK(share.share <= last);
        last = share.share;
        CHECK(label->text().contains(QStringLiteral("±")));
        // No key of the file shows: it would hold an underscore or a slash.
        const QString name = label->accessibleName().section(QLatin1Char(':'), 0, 0);
        CHECK(!name.contains(QLatin1Char('_')));
        CHECK(!name.contains(QLatin1Char('/')));
    }
    CHECK(shown >= 3);
}

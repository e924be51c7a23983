#include "run/curve_view.hpp"
#include "run/curves_page.hpp"
#include "run/lane_page.hpp"
#include "run/lane_view.hpp"
#include "run/piece_table.hpp"
#include "run/run_sheet.hpp"
#include "run/steps_page.hpp"
#include "support/bench.hpp"
#include "text/figure_text.hpp"

#include <rampwright/project/track_library.hpp>
#include <rampwright/study/steps.hpp>
#include <rampwright/units/format.hpp>

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSvgRenderer>
#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

void show_run(Workbench& bench, int page) {
    bench.window->show_step(Step::run);
    bench.find<RunSheet>(QStringLiteral("run-sheet")).show_page(page);
    QApplication::processEvents();
}

void click(Workbench& bench, const char* name) {
    QTest::mouseClick(&bench.find<QPushButton>(QLatin1String(name)), Qt::LeftButton);
}

/// Types into a cell as a person does: the editor opens, the text replaces what is there.
void type(PieceTable& table, int row, int column, const char* text) {
    table.setCurrentCell(row, column);
    table.editItem(table.item(row, column));
    auto* editor = table.findChild<QLineEdit*>();
    REQUIRE(editor);
    editor->setText(QLatin1String(text));
    QTest::keyClick(editor, Qt::Key_Return);
    QApplication::processEvents();
    // The closed editor must not be found in the place of the next one.
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

} // namespace

TEST_CASE("The curves show the core's numbers at the cursor, by mouse and by keys", "[run]") {
    Workbench bench;
    show_run(bench, 0);
    auto& view = bench.find<CurveView>(QStringLiteral("curves"));
    REQUIRE(view.isVisible());
    REQUIRE(view.curves());
    const Curves curves = curves_along_track(bench.session.project(), 0);
    CHECK(view.curves()->points.size() == curves.points.size());
    view.setFocus();
    QTest::keyClick(&view, Qt::Key_End);
    CHECK(view.cursor() == Approx(curves.length));
    CHECK(view.accessibleName().contains(QString::fromStdString(
        format(bench.session.figures()->heat.finish_speed, Quantity::speed, UnitSystem::metric))));
    QTest::keyClick(&view, Qt::Key_Left);
    CHECK(view.cursor() == Approx(0.99 * curves.length));
    QTest::mouseMove(&view, QPoint(view.width() / 3, view.height() / 2));
    QApplication::processEvents();
    CHECK(view.cursor() < 0.5 * curves.length);
    // It follows an edit.
    bench.session.apply(set_ballast_mass(bench.session.document(), 0, 0, 0.02));
    CHECK(view.curves()->points.back().speed != curves.points.back().speed);
}

TEST_CASE("The picture of the curves can be copied and saved, the numbers pasted", "[run]") {
    Workbench bench;
    show_run(bench, 0);
    auto* page = bench.window->findChild<CurvesPage*>();
    REQUIRE(page);
    QTemporaryDir folder;
    REQUIRE(page->save_picture(folder.filePath(QStringLiteral("heat.png"))));
    const QImage image(folder.filePath(QStringLiteral("heat.png")));
    CHECK(image.width() == 2200);
    REQUIRE(page->save_picture(folder.filePath(QStringLiteral("heat.svg"))));
    CHECK(QSvgRenderer(folder.filePath(QStringLiteral("heat.svg"))).isValid());
    CHECK_FALSE(page->save_picture(QStringLiteral("/nowhere/at/all.png")));
    click(bench, "curves.numbers");
    const QStringList rows = QApplication::clipboard()->text().trimmed().split(QLatin1Char('\n'));
    const auto* curves = bench.find<CurveView>(QStringLiteral("curves")).curves();
    REQUIRE(std::size_t(rows.size()) == curves->points.size() + 1);
    for (const QString& row : rows)
        REQUIRE(row.split(QLatin1Char('\t')).size() == 11);
    const QStringList last = rows.back().split(QLatin1Char('\t'));
    CHECK(last[2].toDouble() == Approx(curves->points.back().speed).epsilon(1e-6));
}

TEST_CASE("What pays lists the core's steps with effort and gain, beside the window's own work", "[run]") {
    Workbench bench;
    show_run(bench, 1);
    auto* page = bench.window->findChild<StepsPage*>();
    REQUIRE(page);
    REQUIRE(QTest::qWaitFor([&] { return page->fresh(); }, 30000));
    const auto steps = find_steps(bench.session.project(), 0);
    REQUIRE(!steps.empty());
    for (const BuilderStep& step : steps) {
        INFO(step.key);
        auto* gain =
            bench.window->findChild<QLabel*>(QStringLiteral("step-gain.") + QString::fromStdString(step.key));
        REQUIRE(gain);
        CHECK(gain->accessibleName().contains(QString::fromStdString(step.text)));
        CHECK(gain->text().contains(step.gain >= 0 ? QStringLiteral("faster") : QStringLiteral("slower")));
        CHECK(value_of(gain->text().section(QStringLiteral(" ±"), 0, 0) + QStringLiteral(" ms"),
                       Quantity::time) == Approx(std::abs(step.gain)).margin(0.1 * step.sigma + 1e-6));
    }
    for (const auto* label : page->findChildren<QLabel*>())
        CHECK_FALSE(label->text().contains(QLatin1Char('_')));
    // Where this model and practice part, the page says so.
    const auto cant =
        std::find_if(steps.begin(), steps.end(), [](const auto& s) { return s.key == "cant-rear"; });
    REQUIRE(cant != steps.end());
    CHECK((page->findChild<QLabel*>(QStringLiteral("what-pays.dispute")) != nullptr) == (cant->gain < 0));
    // An edit asks again.
    bench.session.apply(set_ballast_mass(bench.session.document(), 0, 0, 0.02));
    CHECK_FALSE(page->fresh());
    REQUIRE(QTest::qWaitFor([&] { return page->fresh(); }, 30000));
}

TEST_CASE("The lane's pieces are typed, added and removed, each one step back", "[run]") {
    Workbench bench;
    show_run(bench, 2);
    auto& table = bench.find<PieceTable>(QStringLiteral("lane.pieces"));
    REQUIRE(table.rowCount() == 3);
    const Document before = bench.session.document();
    type(table, 0, 1, "3 m");
    CHECK(std::get<Straight>(bench.session.project().track.pieces[0]).length == Approx(3.0));
    CHECK(bench.session.history().count() == 1);
    // No value: said, and the lane stays.
    type(table, 0, 1, "long");
    CHECK(std::get<Straight>(bench.session.project().track.pieces[0]).length == Approx(3.0));
    CHECK(bench.find<QLabel>(QStringLiteral("lane.problem")).isVisible());
    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(bench.session.document() == before);

    table.setCurrentCell(1, 2);
    click(bench, "lane.add-straight");
    CHECK(bench.session.project().track.pieces.size() == 4);
    CHECK(std::holds_alternative<Straight>(bench.session.project().track.pieces[2]));
    table.setCurrentCell(2, 1);
    click(bench, "lane.remove");
    click(bench, "lane.add-bend");
    CHECK(bench.session.project().track.pieces.size() == 4);
    while (bench.session.history().canUndo())
        bench.session.history().undo();
    CHECK(bench.session.document() == before);
}

TEST_CASE("A piece is chosen on the picture as in the table", "[run]") {
    Workbench bench;
    show_run(bench, 2);
    auto& view = bench.find<LaneView>(QStringLiteral("lane.view"));
    auto& table = bench.find<PieceTable>(QStringLiteral("lane.pieces"));
    QTest::mouseClick(&view, Qt::LeftButton, {}, QPoint(view.width() * 3 / 4, view.height() / 2));
    CHECK(table.currentRow() == 2);
    view.setFocus();
    QTest::keyClick(&view, Qt::Key_Left);
    CHECK(table.currentRow() == 1);
}

TEST_CASE("Start and finish lines are dragged on the picture, one step each, Esc puts them back", "[run]") {
    Workbench bench;
    show_run(bench, 2);
    auto& view = bench.find<LaneView>(QStringLiteral("lane.view"));
    const Document before = bench.session.document();
    const QPoint finish = view.line_place(LaneView::Line::finish);
    drag(view, finish, finish - QPoint(60, 0));
    CHECK(bench.session.project().track.finish_line < 10.9);
    CHECK(bench.session.project().track.start_line == Approx(0.3));
    CHECK(bench.session.history().count() == 1);
    const Document dragged = bench.session.document();
    const QPoint start = view.line_place(LaneView::Line::start);
    drag(view, start, start + QPoint(30, 0), {}, [&] { QTest::keyClick(&view, Qt::Key_Escape); });
    CHECK(bench.session.document() == dragged);
    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(bench.session.document() == before);
}

TEST_CASE("Lanes of the library are put in by a click", "[run]") {
    Workbench bench;
    show_run(bench, 2);
    auto& library = bench.find<QComboBox>(QStringLiteral("lane.library"));
    REQUIRE(library.count() == int(track_library().size()));
    for (int n = 0; n < library.count(); ++n) {
        library.setCurrentIndex(n);
        click(bench, "lane.put-in");
        INFO(library.currentText().toStdString());
        CHECK(bench.session.project().track.title == track_library()[std::size_t(n)].title);
        CHECK(bench.session.figures());
    }
}

TEST_CASE("Measured points are pasted with their residual shown", "[run]") {
    Workbench bench;
    show_run(bench, 2);
    click(bench, "lane.by-points");
    auto& editor = bench.find<QPlainTextEdit>(QStringLiteral("lane.points"));
    QString text;
    const Track track(bench.session.project().track);
    for (double s = 0; s < 12.4; s += 0.2) {
        const auto at = track.point(s).at;
        text += QStringLiteral("%1\t%2\n").arg(at.real() * 1e3, 0, 'f', 2).arg(at.imag() * 1e3, 0, 'f', 2);
    }
    editor.setPlainText(text);
    const double before = *bench.session.figures()->heat.time;
    click(bench, "lane.use-points");
    CHECK(bench.session.project().track.measured.size() > 50);
    REQUIRE(bench.session.figures());
    // The same lane by its points: a heat of the same length to a millisecond.
    CHECK(*bench.session.figures()->heat.time == Approx(before).margin(1e-3));
    CHECK(bench.find<QLabel>(QStringLiteral("lane.residual")).text().contains(QStringLiteral("mm")));
    // What is no number is named with its line, and the lane stays.
    editor.setPlainText(QStringLiteral("0 1000\nabc 12\n"));
    click(bench, "lane.use-points");
    CHECK(bench.find<QLabel>(QStringLiteral("lane.problem")).text().contains(QStringLiteral("line 2")));
    CHECK(bench.session.project().track.measured.size() > 50);
}

TEST_CASE("A lane nobody has measured says what does not depend on it", "[run]") {
    Workbench bench;
    show_run(bench, 2);
    auto& guess = bench.find<QCheckBox>(QStringLiteral("lane.guess"));
    CHECK_FALSE(bench.find<QLabel>(QStringLiteral("lane.unknown")).isVisible());
    const double sure = bench.session.figures()->heat.sigma;
    QTest::mouseClick(&guess, Qt::LeftButton, {}, QPoint(10, guess.height() / 2));
    REQUIRE(bench.session.project().track.known == LaneKnown::unknown);
    auto& said = bench.find<QLabel>(QStringLiteral("lane.unknown"));
    CHECK(said.isVisible());
    CHECK(said.text().contains(QStringLiteral("does not depend on it")));
    CHECK(bench.session.figures()->heat.sigma > 2 * sure);
    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK_FALSE(guess.isChecked());
}

TEST_CASE("Rows of points are read as people paste them", "[run]") {
    const auto one = [](const char* text, UnitSystem units = UnitSystem::metric) {
        return read_points(QString::fromUtf8(text), units).at(0);
    };
    CHECK(one("250 1134.5").isApprox(Vec2(0.25, 1.1345)));
    CHECK(one("250\t1134,5").isApprox(Vec2(0.25, 1.1345)));
    CHECK(one("250; 1134,5").isApprox(Vec2(0.25, 1.1345)));
    CHECK(one("250.0, 1134.5").isApprox(Vec2(0.25, 1.1345)));
    CHECK(one("0 -12").isApprox(Vec2(0, -0.012)));
    CHECK(one("0 −12").isApprox(Vec2(0, -0.012)));
    CHECK(one("10 48", UnitSystem::inch_ounce).isApprox(Vec2(0.254, 1.2192)));
    CHECK(read_points(QStringLiteral("# a note\n\n0 1\r\n2 3\n"), UnitSystem::metric).size() == 2);
    CHECK_THROWS_AS(one("250"), Problem);
    CHECK_THROWS_AS(one("1 2 3"), Problem);
}

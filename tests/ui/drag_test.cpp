#include "support/bench.hpp"

#include <rampwright/results/table.hpp>

#include <QApplication>
#include <QDialog>
#include <QFileDialog>
#include <QLabel>
#include <QTest>
#include <catch2/catch.hpp>

#include <algorithm>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

/// What `figures` prints for the car of a document, by code.
QString printed(const Document& document, std::size_t car, const std::string& code) {
    const Project project = read_project(document);
    for (const TableRow& row : table_rows(compute_figures(project, car), project.units))
        if (row.code == code) return QString::fromStdString(row.value);
    FAIL("no row " << code);
    return {};
}

void require_figures_on_screen(Workbench& bench) {
    const Document document = bench.session.document();
    const std::size_t car = bench.session.car();
    CHECK(bench.text("answer.time") == printed(document, car, "heat.time_s"));
    CHECK(bench.text("answer.mass") == printed(document, car, "mass_g"));
    CHECK(bench.text("answer.balance") == printed(document, car, "balance_ahead_of_rear_axle_mm"));
    CHECK(bench.text("answer.front_load") == printed(document, car, "front_load_g"));
    for (const char* loss : {"journal", "hub", "rolling", "scrub", "air"})
        CHECK(bench.text((std::string("energy.") + loss).c_str()) ==
              printed(document, car, std::string("budget_mj.") + loss));
}

double front_load(Workbench& bench) {
    return value_of(bench.text("answer.front_load"), Quantity::mass);
}

/// So many metres along a view, in pixels.
QPoint by(Workbench& bench, View view, double across, double up) {
    const auto& map = bench.drawing().map();
    return (map.plane_to_pixel(view, {across, up}) - map.plane_to_pixel(view, {0, 0})).toPoint();
}

} // namespace

TEST_CASE("Ballast dragged rearward lightens the front; undo, redo, save and reopen agree", "[drag]") {
    Workbench bench;
    const std::string before_text = to_text(bench.session.document());
    const double before = front_load(bench);
    const double start_x = bench.session.plan().ballast.at(0).at.x();
    require_figures_on_screen(bench);

    const QPoint from = pixel_of_piece(bench, 0, View::side);
    drag(bench.drawing(), from, from + by(bench, View::side, -0.012, 0), {}, [&] {
        // The button is still down: the figures have followed, nothing is in the history yet.
        CHECK(front_load(bench) < before);
        CHECK(bench.session.history().count() == 0);
        require_figures_on_screen(bench);
    });
    const double after = front_load(bench);
    CHECK(after < before);
    CHECK(bench.session.plan().ballast.at(0).at.x() == Approx(start_x - 0.012).margin(0.6e-3));
    CHECK(bench.session.history().count() == 1);
    CHECK(bench.window->isWindowModified());
    require_figures_on_screen(bench);
    const Document moved = bench.session.document();

    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(front_load(bench) == before);
    CHECK(to_text(bench.session.document()) == before_text);
    CHECK_FALSE(bench.window->isWindowModified());
    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    CHECK(front_load(bench) == after);
    CHECK(bench.session.document() == moved);

    QTemporaryDir folder;
    const QString saved = folder.filePath(QStringLiteral("moved.ramp.json"));
    with_dialog(
        [&] { QTest::keyClick(bench.window.get(), Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier); },
        [&](QDialog& dialog) {
            dynamic_cast<QFileDialog&>(dialog).selectFile(saved);
            dialog.accept();
        });
    REQUIRE(QFile::exists(saved));
    CHECK_FALSE(bench.window->isWindowModified());

    Workbench reopened(saved.toStdString());
    CHECK(front_load(reopened) == after);
    CHECK(reopened.session.plan().ballast.at(0).at == bench.session.plan().ballast.at(0).at);
    require_figures_on_screen(reopened);
}

TEST_CASE("Ballast is dragged in every view along the axes the view shows", "[drag]") {
    const View view = GENERATE(View::side, View::top, View::front);
    Workbench bench;
    // Seen from the front one piece may hide another: the last one lies uppermost.
    const std::size_t piece = bench.session.plan().ballast.size() - 1;
    const Vec3 start = bench.session.plan().ballast.at(piece).at;
    const QPoint from = pixel_of_piece(bench, piece, view);
    drag(bench.drawing(), from, from + by(bench, view, 0.003, 0.002), Qt::ControlModifier);
    const Vec3 moved = bench.session.plan().ballast.at(piece).at - start;
    const auto axes = axes_of(view);
    const double pixel = 1 / bench.drawing().map().pixels_per_metre();
    CHECK(moved[axes[0]] == Approx(0.003).margin(pixel));
    CHECK(moved[axes[1]] == Approx(0.002).margin(pixel));
    CHECK(moved[3 - axes[0] - axes[1]] == 0);
}

TEST_CASE("A drag keeps to whole millimetres unless Ctrl is held", "[drag]") {
    Workbench bench;
    const QPoint from = pixel_of_piece(bench, 0, View::side);
    const QPoint to = from + by(bench, View::side, -0.0104, 0);
    const auto off_grid = [&] {
        const double mm = bench.session.plan().ballast.at(0).at.x() * 1e3;
        return std::abs(mm - std::round(mm));
    };
    drag(bench.drawing(), from, to);
    CHECK(off_grid() < 1e-9);
    bench.session.history().undo();
    drag(bench.drawing(), from, to + QPoint(1, 0), Qt::ControlModifier);
    CHECK(off_grid() > 1e-3);
}

TEST_CASE("Escape puts a dragged piece back and leaves no step", "[drag]") {
    Workbench bench;
    const Document before = bench.session.document();
    const QString load = bench.text("answer.front_load");
    const QPoint from = pixel_of_piece(bench, 0, View::side);
    drag(bench.drawing(), from, from + by(bench, View::side, -0.01, 0), {},
         [&] { QTest::keyClick(&bench.drawing(), Qt::Key_Escape); });
    CHECK(bench.session.document() == before);
    CHECK(bench.text("answer.front_load") == load);
    CHECK(bench.session.history().count() == 0);
}

TEST_CASE("Arrow keys nudge, Shift ten times as far, Ctrl a fifth; a run of them is one step", "[drag]") {
    Workbench bench;
    const Document before = bench.session.document();
    const double start = bench.session.plan().ballast.at(0).at.x();
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of_piece(bench, 0, View::side));
    const auto moved = [&] { return bench.session.plan().ballast.at(0).at.x() - start; };
    QTest::keyClick(&bench.drawing(), Qt::Key_Left);
    CHECK(moved() == Approx(-1e-3).margin(1e-12));
    QTest::keyClick(&bench.drawing(), Qt::Key_Left, Qt::ShiftModifier);
    CHECK(moved() == Approx(-11e-3).margin(1e-12));
    QTest::keyClick(&bench.drawing(), Qt::Key_Right, Qt::ControlModifier);
    CHECK(moved() == Approx(-10.8e-3).margin(1e-12));
    CHECK(bench.session.history().count() == 1);
    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(bench.session.document() == before);
}

// Swift's tail pocket runs from x = 2.8 to 13.2 mm, its mid pocket from 19.8 to 30.2 mm; in that stands a bar
// 10 mm thick and 8 mm high, its middle at (25, 0, 5) mm.
TEST_CASE("A piece dragged over another cut lies in that one; wholly outside none holds it; one step each",
          "[drag]") {
    Workbench bench;
    bench.choose_car("Swift");
    bench.session.apply(remove_ballast(bench.session.document(), bench.session.car(), 0)); // make room
    const auto piece = [&]() -> const BallastPlan& { return bench.session.plan().ballast.at(0); };
    REQUIRE(piece().in == "mid pocket");
    const Document before = bench.session.document();
    // Taken hold of at its upper rear corner, away from where a mark may lie.
    const auto pull = [&](double by_x, double by_z, const std::function<void()>& meanwhile = {}) {
        const Vec3 at = piece().at * 1e3 + Vec3(-4, 0, 3);
        drag(bench.drawing(), pixel_of(bench, View::side, at.x(), at.z()),
             pixel_of(bench, View::side, at.x() + by_x, at.z() + by_z), {}, meanwhile);
    };
    pull(-17, 0, [&] { CHECK(piece().in == "tail pocket"); }); // already while the button is down
    CHECK((piece().at * 1e3).isApprox(Vec3(8, 0, 5)));
    CHECK(piece().in == "tail pocket");
    CHECK(bench.session.history().count() == 2);
    const Document in_tail = bench.session.document();

    // Halfway out it is still held there, so that what sticks out is told: from 13.2 to 20 mm.
    pull(7, 0);
    CHECK((piece().at * 1e3).isApprox(Vec3(15, 0, 5)));
    CHECK(piece().in == "tail pocket");
    REQUIRE(bench.session.figures());
    const auto& findings = bench.session.figures()->findings;
    const auto out = std::find_if(findings.begin(), findings.end(),
                                  [](const Finding& each) { return each.code == "ballast-outside-cut"; });
    REQUIRE(out != findings.end());
    CHECK(out->values.at(0).second == Approx(6.8).epsilon(1e-9));
    // Wholly out, above the car.
    pull(0, 20);
    CHECK((piece().at * 1e3).isApprox(Vec3(15, 0, 25)));
    CHECK(piece().in.empty());
    CHECK(bench.session.history().count() == 4);
    for (int i = 0; i < 2; ++i)
        QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(bench.session.document() == in_tail);
    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(bench.session.document() == before);
}

TEST_CASE("Arrow keys carry a piece from cut to cut as well", "[drag]") {
    Workbench bench;
    bench.choose_car("Swift");
    const auto in = [&] { return bench.session.plan().ballast.at(1).in; };
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of_piece(bench, 1, View::side));
    QTest::keyClick(&bench.drawing(), Qt::Key_Left, Qt::ShiftModifier); // its front face at 20 mm
    CHECK(in() == "mid pocket");
    QTest::keyClick(&bench.drawing(), Qt::Key_Left); // at 19 mm, its middle at 14 mm
    CHECK(in().empty());
    QTest::keyClick(&bench.drawing(), Qt::Key_Left);
    CHECK(in() == "tail pocket");
}

TEST_CASE("From above a piece that is dragged over a pocket goes down to its floor", "[drag]") {
    // Bittern's pocket: x from 51 to 79 mm, its floor at 8 mm; the wood is 16 mm high.
    Workbench bench;
    bench.session.apply(add_ballast(bench.session.document(), 0,
                                    Json{{"piece", "plate"},
                                         {"shape", "sheet"},
                                         {"size_mm", {20, 16, 2}},
                                         {"mass_g", 5},
                                         {"at_mm", {110, 3, 17}}}));
    const auto plate = [&]() -> const BallastPlan& { return bench.session.plan().ballast.back(); };
    const QPoint from = pixel_of(bench, View::top, 103, -3);
    drag(bench.drawing(), from, from + by(bench, View::top, -0.045, 0.001));
    CHECK((plate().at * 1e3).isApprox(Vec3(65, 4, 8 + 1)));
    CHECK(plate().in == "weight pocket");
    CHECK(bench.session.history().count() == 2);
}

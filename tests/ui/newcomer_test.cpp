// The ten minutes of somebody who has never seen the program: from an empty plan to one that is saved, with a
// sheet to print. The same way from outside, with another process's clicks: tests/outside/walks.py.
#include "support/bench.hpp"

#include <rampwright/results/figures.hpp>

#include <QAbstractButton>
#include <QApplication>
#include <QCheckBox>
#include <QDialog>
#include <QFile>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

/// What a person finds by its name.
template <class Widget>
Widget& named(Workbench& bench, const char* name) {
    for (auto* widget : bench.window->findChildren<Widget*>())
        if (widget->isVisible() && widget->accessibleName() == QLatin1String(name)) return *widget;
    throw std::runtime_error(std::string("nothing is called ") + name);
}

void name_file(QDialog& dialog, const QString& path) {
    auto* name = dialog.findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
    REQUIRE(name);
    name->setText(path);
    dialog.accept();
}

} // namespace

TEST_CASE("A newcomer goes from an empty plan to a saved one with its sheet", "[newcomer]") {
    QTemporaryDir folder;
    const QString plan = folder.filePath(QStringLiteral("robin.ramp.json"));
    const QString sheet = folder.filePath(QStringLiteral("robin.pdf"));
    Workbench bench;
    QTest::keyClick(bench.window.get(), Qt::Key_N, Qt::ControlModifier);
    CHECK(bench.session.plan().ballast.empty());
    const QString plain = bench.text("answer.time");

    go_to_step(bench, 1);
    type_into(named<QLineEdit>(bench, "Wood, Block weighs"), QStringLiteral("4 oz"));
    REQUIRE(bench.session.plan().body.block_mass);
    CHECK(*bench.session.plan().body.block_mass == Approx(0.1133980925)); // the international ounce, times 4
    QTest::mouseClick(&named<QAbstractButton>(bench, "Start from the shape wedge"), Qt::LeftButton);
    QTest::mouseClick(&bench.find<QCheckBox>(QStringLiteral("decided.shape")), Qt::LeftButton);
    CHECK(bench.text("answer.time") != plain);

    go_to_step(bench, 3);
    const double before = bench.session.figures()->balance_ahead_of_rear_axle;
    auto& shelf = bench.find<QListWidget>(QStringLiteral("shelf"));
    auto* bar = shelf.item(0);
    shelf.scrollToItem(bar);
    QTest::mouseClick(shelf.viewport(), Qt::LeftButton, {}, shelf.visualItemRect(bar).center());
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, View::top, 40, 0));
    REQUIRE(bench.session.plan().ballast.size() == 1);
    for (int i = 0; i < 5; ++i)
        QTest::keyClick(&bench.drawing(), Qt::Key_Left);
    // Weight behind the balance point takes it back.
    CHECK(bench.session.figures()->balance_ahead_of_rear_axle < before);
    const QString time = bench.text("answer.time"), mass = bench.text("answer.mass");

    go_to_step(bench, 6);
    auto& save = bench.find<QPushButton>(QStringLiteral("save-pdf"));
    REQUIRE(QTest::qWaitFor([&] { return save.isEnabled() && save.isVisible(); }));
    with_dialog([&] { QTest::mouseClick(&save, Qt::LeftButton); },
                [&](QDialog& dialog) { name_file(dialog, sheet); });
    QFile paper(sheet);
    REQUIRE(paper.open(QIODevice::ReadOnly));
    CHECK(paper.read(5) == "%PDF-");
    bench.window->activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(bench.window.get()));
    with_dialog([&] { QTest::keyClick(bench.window.get(), Qt::Key_S, Qt::ControlModifier); },
                [&](QDialog& dialog) { name_file(dialog, plan); });
    CHECK_FALSE(bench.window->isWindowModified());

    Workbench again(plan.toStdString());
    CHECK(again.text("answer.time") == time);
    CHECK(again.text("answer.mass") == mass);
    go_to_step(again, 1);
    CHECK(again.find<QCheckBox>(QStringLiteral("decided.shape")).isChecked());
}

// Cars from other files.
#include "support/group.hpp"

#include <QDialog>
#include <QFile>
#include <QLineEdit>
#include <QListWidget>
#include <QTabBar>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

TEST_CASE("A car is taken in from another file, as one step, and what is other here is told", "[group]") {
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("other.ramp.json"));
    Document other = load_document(demo_path);
    other.root["track"]["title"] = "another lane";
    save_document(file.toStdString(), other);
    Workbench bench;
    const std::string before = to_text(bench.session.document());
    auto& tabs = bench.find<QTabBar>(QStringLiteral("cars"));
    const auto choose_file = [&](QDialog& dialog) {
        auto* name = dialog.findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
        REQUIRE(name);
        name->setText(file);
        dialog.accept();
    };
    const auto take = [&] { press(bench, Qt::Key_O, Qt::ControlModifier | Qt::ShiftModifier); };
    with_dialogs(take, {choose_file, [](QDialog& dialog) {
                            auto* list = dialog.findChild<QListWidget*>(QStringLiteral("take.in.cars"));
                            REQUIRE(list);
                            CHECK(list->count() == 3);
                            list->setCurrentRow(2);
                            dialog.accept();
                        }});
    REQUIRE(tabs.count() == 4);
    CHECK(tabs.tabText(tabs.currentIndex()) == QStringLiteral("Swift 2"));
    CHECK(status_of(bench).contains(QStringLiteral("Swift 2")));
    CHECK(status_of(bench).contains(QStringLiteral("Lane or air are others")));
    CHECK(bench.session.history().count() == 1);
    const QString time = bench.text("answer.time");
    bench.choose_car("Swift");
    CHECK(bench.text("answer.time") == time); // the same car on this lane
    press(bench, Qt::Key_Z);
    CHECK((to_text(bench.session.document()) == before));
    CHECK(tabs.count() == 3);
    // Changed one's mind; and a file that is none.
    with_dialogs(take, {choose_file, [](QDialog& dialog) { dialog.reject(); }});
    CHECK(tabs.count() == 3);
    QFile broken(file);
    REQUIRE(broken.open(QIODevice::WriteOnly));
    broken.write("soup");
    broken.close();
    with_dialogs(take, {choose_file, [](QDialog& dialog) { dialog.accept(); }});
    CHECK((to_text(bench.session.document()) == before));
}

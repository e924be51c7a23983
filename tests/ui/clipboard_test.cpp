// Pieces by the clipboard: from car to car, window to window, and as text.
#include "drawing/piece_clipboard.hpp"
#include "support/group.hpp"

#include <QApplication>
#include <QClipboard>
#include <QMimeData>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

TEST_CASE("A piece is cut out of one car and pasted into another, its pocket comes along", "[group]") {
    Workbench bench;
    const std::string before = to_text(bench.session.document());
    const Json row = bench.session.document().root["cars"][0]["ballast"][0];
    click_piece(bench, 0);
    press(bench, Qt::Key_X);
    CHECK(bench.session.plan().ballast.size() == 1);
    CHECK(bench.session.history().count() == 1);
    bench.choose_car("Wagtail");
    press(bench, Qt::Key_V);
    REQUIRE(bench.session.plan().ballast.size() == 3);
    REQUIRE(bench.session.plan().body.cuts.size() == 2);
    CHECK(bench.session.plan().ballast[2].in == bench.session.plan().body.cuts[1].name);
    CHECK(bench.session.document().root["cars"][1]["ballast"][2]["at_mm"] == row["at_mm"]);
    CHECK(bench.drawing().selected() == Target{TargetKind::piece, 2, 0});
    CHECK(bench.session.history().count() == 2);
    press(bench, Qt::Key_Z);
    press(bench, Qt::Key_Z);
    CHECK((to_text(bench.session.document()) == before));
}

TEST_CASE("What is copied in one window is pasted in another with the same figures", "[group]") {
    Workbench one, other;
    // Both bars taken out of the other window's car: after the paste it is the car of the first.
    press(other, Qt::Key_A);
    press(other, Qt::Key_Delete, {});
    const QString bare = other.text("answer.mass");
    press(one, Qt::Key_A);
    press(one, Qt::Key_C);
    press(other, Qt::Key_V);
    CHECK(other.text("answer.mass") != bare);
    for (const char* answer : {"answer.mass", "answer.front_load", "answer.balance", "answer.time"})
        CHECK(other.text(answer) == one.text(answer));
    CHECK(other.session.document().root["cars"][0]["ballast"] ==
          one.session.document().root["cars"][0]["ballast"]);
    CHECK(one.session.history().count() == 0);
}

TEST_CASE("The clipboard's text is a table; our JSON as text pastes too; anything else says why not",
          "[group]") {
    Workbench bench;
    press(bench, Qt::Key_A);
    press(bench, Qt::Key_C);
    QClipboard* clipboard = QApplication::clipboard();
    const QStringList lines = clipboard->text().split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    REQUIRE(lines.size() == 3);
    CHECK(lines[1].startsWith(QStringLiteral("tungsten bar 13\t39.5 g\t58")));
    CHECK(lines[1].endsWith(QStringLiteral("\tweight pocket")));
    const QString json = QString::fromUtf8(clipboard->mimeData()->data(QLatin1String(pieces_mime_type)));
    REQUIRE_FALSE(json.isEmpty());

    const Document before = bench.session.document();
    const QString as_table = clipboard->text();
    auto truncated = std::make_unique<QMimeData>();
    truncated->setData(QLatin1String(pieces_mime_type), json.left(40).toUtf8());
    for (const QString& bad :
         {QStringLiteral("a recipe for soup"), QString(), as_table, json.left(json.size() / 2),
          QStringLiteral("{\"format\": \"rampwright-pieces\", \"version\": 99}"),
          QString(json).replace(QLatin1String("\"box\""), QLatin1String("\"egg\""))}) {
        INFO(bad.left(50).toStdString());
        clipboard->setText(bad);
        press(bench, Qt::Key_V);
        CHECK((bench.session.document() == before));
        CHECK(bench.session.history().count() == 0);
        CHECK(status_of(bench).size() > 20);
    }
    clipboard->setMimeData(truncated.release());
    press(bench, Qt::Key_V);
    CHECK((bench.session.document() == before));
    CHECK(status_of(bench).contains(QStringLiteral("clipboard")));

    clipboard->setText(json);
    press(bench, Qt::Key_V);
    CHECK(bench.session.plan().ballast.size() == 4);
    CHECK(bench.session.history().count() == 1);
}

#include "files/file_claim.hpp"
#include "files/file_desk.hpp"
#include "files/file_watch.hpp"
#include "files/recent_files.hpp"
#include "files/recovery.hpp"
#include "support/bench.hpp"
#include "window/help_window.hpp"

#include <rampwright/results/table.hpp>

#include <QApplication>
#include <QClipboard>
#include <QDropEvent>
#include <QFile>
#include <QLabel>
#include <QMenu>
#include <QMimeData>
#include <QPushButton>
#include <QScrollBar>
#include <QSettings>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>
#include <QTextBrowser>
#include <catch2/catch.hpp>

#include <csignal>
#include <sys/wait.h>
#include <unistd.h>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

/// A copy of the demo that may be written.
struct OwnCopy {
    QTemporaryDir folder;
    QString file = folder.filePath(QStringLiteral("race.ramp.json"));
    OwnCopy() {
        REQUIRE(QFile::copy(QString::fromStdString(demo_path), file));
        QFile(file).setPermissions(QFile::ReadOwner | QFile::WriteOwner);
    }
    std::string path() const { return file.toStdString(); }
    /// Replaced by renaming, as careful programs do.
    void replace_with(const Document& document) const { write_file(path(), to_text(document)); }
};

Edit heavier(const Document& document) {
    return set_units(document, UnitSystem::inch_ounce);
}

void answer_notice(Workbench& bench, int answer) {
    QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("notice.answer.%1").arg(answer)),
                      Qt::LeftButton);
    QApplication::processEvents();
}

} // namespace

TEST_CASE("A killed program's unsaved work is offered once, and is what was there", "[files]") {
    QTemporaryDir folder;
    const OwnCopy copy;
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        Session session;
        session.open(copy.path());
        Recovery recovery(session, folder.path());
        session.apply(heavier(session.document()));
        recovery.keep_now();
        ::kill(::getpid(), SIGKILL);
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(WIFSIGNALED(status));
    REQUIRE(WTERMSIG(status) == SIGKILL);

    const auto left = Recovery::left_in(folder.path());
    REQUIRE(left.size() == 1);
    CHECK(left[0].file.string() == copy.path());
    CHECK(left[0].document == heavier(load_document(copy.path())).document);

    Session session;
    session.bring_back(left[0].document, left[0].file);
    CHECK(session.has_unsaved_work());
    CHECK(session.path().string() == copy.path());
    Recovery::throw_away(left[0]);
    CHECK(Recovery::left_in(folder.path()).empty());
}

TEST_CASE("A clean end, a save and a living window leave nothing to offer", "[files]") {
    QTemporaryDir folder;
    const OwnCopy copy;
    {
        Session session;
        session.open(copy.path());
        Recovery recovery(session, folder.path());
        session.apply(heavier(session.document()));
        recovery.keep_now();
        // The work is on the disk, and its window lives: it is nobody else's to offer.
        REQUIRE(QDir(folder.path()).entryList({QStringLiteral("*.json")}).size() == 1);
        CHECK(Recovery::left_in(folder.path()).empty());
        session.save(copy.path());
        QTRY_VERIFY(QDir(folder.path()).entryList({QStringLiteral("*.json")}).isEmpty());
        session.history().undo();
        recovery.keep_now();
    }
    CHECK(QDir(folder.path()).isEmpty());
}

TEST_CASE("Unsaved work is kept aside by itself within five seconds", "[files]") {
    QTemporaryDir folder;
    Session session;
    session.open(demo_path);
    Recovery recovery(session, folder.path());
    session.apply(heavier(session.document()));
    const auto kept = [&] { return QDir(folder.path()).entryList({QStringLiteral("*.json")}).size() == 1; };
    CHECK(QTest::qWaitFor(kept, 5000));
}

TEST_CASE("A damaged entry is passed over, not offered and not harmed", "[files]") {
    QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("half.json")));
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("{\"format\": \"rampwright-recovery\", \"project\": {\"format\"");
    file.close();
    CHECK(Recovery::left_in(folder.path()).empty());
    CHECK(file.exists());
}

TEST_CASE("A file changed by another program is read again where nothing is unsaved", "[files]") {
    const OwnCopy copy;
    Workbench bench(copy.path());
    const Document theirs = heavier(bench.session.document()).document;
    copy.replace_with(theirs);
    CHECK(QTest::qWaitFor([&] { return bench.session.document() == theirs; }, 5000));
    // The watch outlives the replacement.
    const Document again = set_units(theirs, UnitSystem::metric).document;
    copy.replace_with(again);
    CHECK(QTest::qWaitFor([&] { return bench.session.document() == again; }, 5000));
    CHECK_FALSE(bench.session.has_unsaved_work());
}

TEST_CASE("A file changed by another program never takes unsaved work away", "[files]") {
    const OwnCopy copy;
    Workbench bench(copy.path());
    bench.session.apply(heavier(bench.session.document()));
    const Document mine = bench.session.document();
    Document theirs = load_document(copy.path());
    theirs.root["title"] = "Theirs";
    copy.replace_with(theirs);
    auto& notice = bench.find<QWidget>(QStringLiteral("notice"));
    REQUIRE(QTest::qWaitFor([&] { return notice.isVisible(); }, 5000));
    CHECK(bench.session.document() == mine);
    SECTION("keep mine") {
        answer_notice(bench, 1);
        CHECK(bench.session.document() == mine);
        bench.session.history().undo();
        // Even back at what was opened, the file holds something else by now.
        CHECK(bench.session.has_unsaved_work());
    }
    SECTION("take theirs") {
        answer_notice(bench, 0);
        CHECK(bench.session.document() == theirs);
        CHECK_FALSE(bench.session.has_unsaved_work());
    }
    CHECK_FALSE(notice.isVisible());
}

TEST_CASE("Our own save is no change from outside", "[files]") {
    const OwnCopy copy;
    Workbench bench(copy.path());
    QSignalSpy opened(&bench.session, &Session::file_changed);
    bench.session.apply(heavier(bench.session.document()));
    REQUIRE(bench.window->files().save());
    QTest::qWait(600);
    CHECK(opened.count() == 1);
    CHECK_FALSE(bench.find<QWidget>(QStringLiteral("notice")).isVisible());
}

TEST_CASE("Two windows on one file are noticed, and a dead one is not", "[files]") {
    QTemporaryDir folder;
    const OwnCopy copy;
    FileClaim first(folder.path());
    CHECK(first.claim(copy.path()));
    CHECK(first.claim(copy.path()));
    {
        FileClaim second(folder.path());
        CHECK(second.taken_elsewhere(copy.path()));
        CHECK_FALSE(second.claim(copy.path()));
        // The same file by another road.
        const std::string link = copy.folder.filePath(QStringLiteral("link.ramp.json")).toStdString();
        REQUIRE(QFile::link(copy.file, QString::fromStdString(link)));
        CHECK_FALSE(second.claim(link));
    }
    const pid_t child = ::fork();
    if (child == 0) {
        FileClaim third(folder.path());
        first.release();
        third.claim(copy.path());
        ::kill(::getpid(), SIGKILL);
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    first.release();
    FileClaim fourth(folder.path());
    CHECK(fourth.claim(copy.path()));
}

TEST_CASE("Recent files: newest first, each once, a missing one greyed and told", "[files]") {
    QSettings().remove(QStringLiteral("files/recent"));
    const OwnCopy one, two;
    QMenu menu;
    RecentFiles recent(menu);
    CHECK_FALSE(menu.isEnabled());
    recent.add(one.file);
    recent.add(two.file);
    recent.add(one.file);
    CHECK(RecentFiles::files() == QStringList{one.file, two.file});
    QFile::remove(two.file);
    Q_EMIT menu.aboutToShow();
    const auto actions = menu.actions();
    CHECK(actions.at(0)->isEnabled());
    CHECK_FALSE(actions.at(1)->isEnabled());
    CHECK(actions.at(1)->text().contains(QStringLiteral("not there")));
    QSignalSpy chosen(&recent, &RecentFiles::chosen);
    actions.at(0)->trigger();
    REQUIRE(chosen.count() == 1);
    CHECK(chosen.at(0).at(0).toString() == one.file);
    QSettings().remove(QStringLiteral("files/recent"));
}

TEST_CASE("A file dropped on the window opens", "[files]") {
    const OwnCopy copy;
    Workbench bench;
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(copy.file)});
    QDragEnterEvent enter({300, 300}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(bench.window.get(), &enter);
    CHECK(enter.isAccepted());
    QDropEvent drop(QPointF(300, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(bench.window.get(), &drop);
    CHECK(bench.session.path().string() == copy.path());
}

TEST_CASE("New starts with a plain block that computes without a setting touched", "[files]") {
    Workbench bench;
    QTest::keyClick(bench.window.get(), Qt::Key_N, Qt::ControlModifier);
    CHECK_FALSE(bench.session.has_file());
    CHECK(bench.session.project().cars.size() == 1);
    REQUIRE(bench.session.figures());
    CHECK(bench.session.figures()->heat.finished);
}

TEST_CASE("Copied figures are the figures, a line each", "[files]") {
    Workbench bench;
    QTest::keyClick(bench.window.get(), Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    const QStringList lines = QApplication::clipboard()->text().split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    const auto rows = table_rows(*bench.session.figures(), bench.session.project().units);
    REQUIRE(static_cast<std::size_t>(lines.size()) == rows.size());
    for (std::size_t i = 0; i < rows.size(); ++i)
        CHECK(lines[static_cast<int>(i)].toStdString() == rows[i].label + "\t" + rows[i].value);
}

TEST_CASE("F1 opens the guide; its links stay within the pages; the shortcuts are listed", "[files]") {
    Workbench bench;
    QTest::keyClick(bench.window.get(), Qt::Key_F1);
    HelpWindow& help =
        HelpWindow::show_page(QStringLiteral("model"), QStringLiteral("What it does not know"));
    auto* page = help.findChild<QTextBrowser*>(QStringLiteral("help.page"));
    REQUIRE(page);
    CHECK(page->toPlainText().size() > 1000);
    CHECK(page->verticalScrollBar()->value() > 0);
    help.close();
    QTest::keyClick(bench.window.get(), Qt::Key_F1, Qt::ControlModifier);
    auto* table = bench.window->findChild<QDialog*>(QStringLiteral("shortcuts"))->findChild<QTableWidget*>();
    REQUIRE(table);
    bool undo = false;
    for (int row = 0; row < table->rowCount(); ++row)
        undo = undo || table->item(row, 1)->text() ==
                           QKeySequence(QKeySequence::Undo).toString(QKeySequence::NativeText);
    CHECK(undo);
    CHECK(table->rowCount() > 15);
}

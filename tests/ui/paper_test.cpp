#include "panels/step_ruler.hpp"
#include "paper/paper_desk.hpp"
#include "paper/paper_view.hpp"
#include "paper/printing.hpp"
#include "sheet/paint.hpp"
#include "support/bench.hpp"

#include <QAbstractButton>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPrinter>
#include <QProcess>
#include <QPushButton>
#include <QScrollBar>
#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

QByteArray bytes_at(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// The program's own folder for a while: file dialogs begin there.
struct WorkingFolder {
    QString before = QDir::currentPath();
    QTemporaryDir folder;
    WorkingFolder() { QDir::setCurrent(folder.path()); }
    ~WorkingFolder() { QDir::setCurrent(before); }
    QString operator/(const char* name) const { return folder.filePath(QLatin1String(name)); }
};

void click(QWidget& widget) {
    QTest::mouseClick(&widget, Qt::LeftButton, {}, widget.rect().center());
}

void choose_paper_step(Workbench& bench) {
    for (QAbstractButton* button : bench.window->findChild<StepRuler*>()->findChildren<QAbstractButton*>())
        if (button->text() == QStringLiteral("Paper")) return click(*button);
    FAIL("no step Paper");
}

PaperDesk& desk_of(Workbench& bench) {
    auto* desk = bench.session.findChild<PaperDesk*>();
    REQUIRE(desk);
    return *desk;
}

} // namespace

TEST_CASE("From an open car to a PDF on disk by mouse alone", "[paper]") {
    const WorkingFolder here;
    Workbench bench;
    bench.choose_car("Swift");
    choose_paper_step(bench);
    REQUIRE(bench.find<PaperView>(QStringLiteral("pages")).isVisible());
    with_dialog([&] { click(bench.find<QPushButton>(QStringLiteral("save-pdf"))); },
                [&](QDialog& dialog) {
                    auto* box = dialog.findChild<QDialogButtonBox*>();
                    REQUIRE(box);
                    click(*box->button(QDialogButtonBox::Save));
                });
    const QByteArray pdf = bytes_at(here / "Swift.pdf");
    CHECK(pdf.startsWith("%PDF-"));
    CHECK(bench.text("paper-said").contains(QStringLiteral("Swift.pdf")));
    // Byte for byte what the command line writes on that day.
    auto& desk = desk_of(bench);
    QProcess program;
    program.start(QStringLiteral(RAMPWRIGHT_PROGRAM),
                  {QStringLiteral("sheet"), QString::fromStdString(demo_path), QStringLiteral("--car"),
                   QStringLiteral("Swift"), QStringLiteral("--out"), here / "verb.pdf",
                   QStringLiteral("--date"), desk.date().toString(Qt::ISODate)});
    REQUIRE(program.waitForFinished(60000));
    const QByteArray verb = bytes_at(here / "verb.pdf");
    CHECK(verb.size() == pdf.size());
    CHECK(verb == pdf);
}

TEST_CASE("From an open car to a PDF on disk by keyboard alone", "[paper]") {
    const WorkingFolder here;
    Workbench bench;
    QTest::keyClick(bench.window.get(), Qt::Key_7, Qt::ControlModifier);
    REQUIRE(bench.find<PaperView>(QStringLiteral("pages")).isVisible());
    const auto ask = [&] { QTest::keyClick(bench.window.get(), Qt::Key_S, Qt::AltModifier); };
    with_dialog(ask, [&](QDialog& dialog) {
        auto* name = dialog.findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
        REQUIRE(name);
        // The toolkit begins where the last dialog of the process ended, another test's folder.
        auto* files = qobject_cast<QFileDialog*>(&dialog);
        REQUIRE(files);
        files->setDirectory(here.folder.path());
        name->selectAll();
        QTest::keyClicks(name, QStringLiteral("by-hand"));
        QTest::keyClick(name, Qt::Key_Return);
    });
    CHECK(bytes_at(here / "by-hand.pdf").startsWith("%PDF-"));
    // Everything on the slip can be reached with Tab.
    QStringList reached;
    for (int i = 0; i < 80; ++i) {
        QTest::keyClick(bench.window->focusWidget() ? bench.window->focusWidget() : bench.window.get(),
                        Qt::Key_Tab);
        if (bench.window->focusWidget()) reached << bench.window->focusWidget()->objectName();
    }
    for (const char* name :
         {"paper-size", "save-pdf", "print", "save-picture", "printed-bar", "race-date", "race-hour"})
        CHECK(reached.contains(QLatin1String(name)));
}

TEST_CASE("The pages are those of the sheet, and follow the car", "[paper]") {
    Workbench bench;
    choose_paper_step(bench);
    auto& view = bench.find<PaperView>(QStringLiteral("pages"));
    CHECK(view.page_count() == desk_of(bench).sheet()->pages.size());
    CHECK(bench.text("page-count") == QStringLiteral("Page 1 of %1").arg(view.page_count()));
    QTest::keyClick(&view, Qt::Key_PageDown);
    CHECK(view.page() == 1);
    CHECK(bench.text("page-count").startsWith(QStringLiteral("Page 2 of ")));
    QTest::keyClick(&view, Qt::Key_End);
    CHECK(view.page() + 1 == view.page_count());
    const double before = view.pixels_per_mm();
    QTest::keyClick(&view, Qt::Key_Plus);
    CHECK(view.pixels_per_mm() > before);
    QTest::keyClick(&view, Qt::Key_0);
    CHECK(view.pixels_per_mm() == Approx(before));
    // What is shown is what the picture file holds.
    QTest::keyClick(&view, Qt::Key_Home);
    const QImage shown = view.viewport()->grab().toImage();
    const QImage page = paper::to_picture(*desk_of(bench).sheet(), 0, view.pixels_per_mm() * 25.4);
    int differ = 0;
    for (int y = 40; y < 300; y += 7)
        for (int x = 40; x < 300; x += 7)
            differ += shown.pixel(x + 14, y + 14) != page.pixel(x, y);
    CHECK(differ == 0);
    // Another car, another sheet.
    const QString title = desk_of(bench).sheet()->title;
    bench.choose_car("Wagtail");
    CHECK(desk_of(bench).sheet()->title != title);
}

TEST_CASE("A printer that shrinks: the printed bar is typed and the templates grow", "[paper]") {
    Workbench bench;
    choose_paper_step(bench);
    auto& bar = bench.find<QLineEdit>(QStringLiteral("printed-bar"));
    const auto scale = [&] {
        for (const paper::Page& page : desk_of(bench).sheet()->pages)
            if (!page.templates.empty()) return page.templates[0].scale;
        return 0.0;
    };
    CHECK(scale() == 1);
    bar.setFocus();
    QTest::keyClicks(&bar, QStringLiteral("97,0"));
    QTest::keyClick(&bar, Qt::Key_Return);
    CHECK(scale() == Approx(100 / 97.0));
    bar.selectAll();
    QTest::keyClicks(&bar, QStringLiteral("half"));
    QTest::keyClick(&bar, Qt::Key_Return);
    CHECK(scale() == Approx(100 / 97.0)); // what is no length changes nothing, stays, and is told
    CHECK(bar.text() == QStringLiteral("half"));
    CHECK_FALSE(bench.text("paper-said").isEmpty());
}

TEST_CASE("The race's hour and what holds a weight are edits like others", "[paper]") {
    Workbench bench;
    choose_paper_step(bench);
    auto& date = bench.find<QLineEdit>(QStringLiteral("race-date"));
    date.setFocus();
    QTest::keyClicks(&date, QStringLiteral("2026-02-14"));
    QTest::keyClick(&date, Qt::Key_Return);
    CHECK(bench.session.project().race.date == "2026-02-14");
    auto& hour = bench.find<QLineEdit>(QStringLiteral("race-hour"));
    hour.setFocus();
    QTest::keyClicks(&hour, QStringLiteral("7 pm"));
    QTest::keyClick(&hour, Qt::Key_Return);
    CHECK(bench.session.project().race.starts.empty());
    CHECK(hour.text() == QStringLiteral("7 pm"));
    const double mass = bench.session.figures()->mass;
    auto& held = bench.find<QComboBox>(QStringLiteral("held-0"));
    held.setCurrentIndex(held.findData(QStringLiteral("epoxy")));
    CHECK(bench.session.plan().ballast[0].held == "epoxy");
    CHECK(bench.session.figures()->mass > mass);
    bench.session.history().undo();
    CHECK(bench.session.plan().ballast[0].held.empty());
    CHECK(held.currentIndex() == 0);
}

TEST_CASE("A printer gets the pages at true size", "[paper]") {
    const QTemporaryDir folder;
    Workbench bench;
    desk_of(bench).set_paper(paper::Paper::letter);
    const paper::Sheet& sheet = *desk_of(bench).sheet();
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(folder.filePath(QStringLiteral("printed.pdf")));
    set_up_printer(printer, sheet);
    CHECK(printer.paperRect(QPrinter::Millimeter).width() == Approx(215.9).margin(0.1));
    CHECK(printer.pageRect(QPrinter::Millimeter).topLeft() == QPointF(0, 0));
    CHECK(print_sheet(printer, sheet));
    QProcess info;
    info.start(QStringLiteral("pdfinfo"), {printer.outputFileName()});
    REQUIRE(info.waitForFinished(60000));
    const QByteArray said = info.readAllStandardOutput();
    CHECK(said.contains("612 x 792"));
    CHECK(said.contains("Pages:           " + QByteArray::number(qsizetype(sheet.pages.size()))));
}

#include "sheet/paint.hpp"
#include "sheet/pdf_tools.hpp"
#include "support/demo.hpp"
#include "support/program.hpp"
#include "support/wrong_call.hpp"

#include <rampwright/core/problem.hpp>

#include <QImage>
#include <catch2/catch.hpp>

#include <cstdlib>
#include <filesystem>
#include <fstream>

using namespace rampwright;
using namespace rampwright::test;
namespace fs = std::filesystem;

namespace {

std::string bytes_of(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

std::string in(const QTemporaryDir& folder, const char* name) {
    return folder.filePath(QString::fromUtf8(name)).toStdString();
}

} // namespace

TEST_CASE("the verb writes the sheet of a car, the same bytes each time", "[sheet][file]") {
    const QTemporaryDir folder;
    const auto make = [&](const char* name) {
        const Ran ran = run_program({"sheet", demo_path(), "--car", "Swift", "--out", in(folder, name),
                                     "--paper", "letter", "--date", "2026-02-10"});
        CAPTURE(ran.err);
        CHECK(ran.exit == 0);
        CHECK(ran.out.empty());
        CHECK(ran.err.empty());
        return bytes_of(in(folder, name));
    };
    const std::string first = make("a.pdf");
    CHECK(first.starts_with("%PDF-"));
    // Another second, another hash seed, another time zone.
    ::setenv("TZ", "Asia/Kathmandu", 1);
    const std::string second = make("b.pdf");
    ::unsetenv("TZ");
    CHECK(second == first);
    // What the library makes in this process is what the verb makes in another.
    const Project project = demo_project();
    const Figures figures = compute_figures(project, 2);
    const auto sheet = ui::paper::make_sheet({project, 2, figures, QStringLiteral("harbour-hall.ramp.json"),
                                              QDate(2026, 2, 10), ui::paper::Paper::letter});
    CHECK(ui::paper::to_pdf(sheet, QDate(2026, 2, 10)).toStdString() == first);
    // Another date is another sheet.
    CHECK(ui::paper::to_pdf(sheet, QDate(2026, 2, 11)).toStdString() != first);
}

TEST_CASE("fonts are embedded, pages have the paper's size, the date is the one given", "[sheet][file]") {
    const Project project = demo_project();
    for (const auto& [paper, size] :
         {std::pair{ui::paper::Paper::letter, "612 x 792"}, {ui::paper::Paper::a4, "595 x 842"}}) {
        const PdfFile file(ui::paper::to_pdf(sheet_of(project, 0, paper), sheet_date));
        const std::string info = file.report("pdfinfo");
        CHECK(info.find(size) != std::string::npos);
        CHECK(info.find("Feb 10") != std::string::npos);
        CHECK(info.find("Build sheet: Bittern") != std::string::npos);
        std::istringstream fonts(file.report("pdffonts"));
        std::string line;
        std::getline(fonts, line);
        const std::size_t embedded = line.find("emb");
        std::getline(fonts, line);
        int count = 0;
        for (; std::getline(fonts, line); ++count)
            CHECK(line.substr(embedded, 3) == "yes");
        CHECK(count == 2);
    }
}

TEST_CASE("the table of objects still points at them when the date's length changes", "[sheet][file]") {
    // PDF 1.7, 7.5.4: a row "nnnnnnnnnn ggggg n" for each object, from 0, after "xref" and the count.
    ::setenv("TZ", "Asia/Kathmandu", 1); // +05'45' where the toolkit writes its own date
    ::tzset();
    const QByteArray pdf = ui::paper::to_pdf(sheet_of(demo_project(), 0, ui::paper::Paper::a4), sheet_date);
    ::unsetenv("TZ");
    ::tzset();
    const qsizetype mark = pdf.lastIndexOf("startxref\n") + 10;
    qsizetype row = pdf.mid(mark, pdf.indexOf('\n', mark) - mark).trimmed().toLongLong();
    REQUIRE(pdf.mid(row, 5) == "xref\n");
    row = pdf.indexOf('\n', row + 5) + 1;
    int objects = 0;
    for (int n = 0; pdf.mid(row + 17, 1) == "n" || n == 0; ++n, row += 20) {
        if (n == 0) continue; // the head of the free ones
        const qsizetype offset = pdf.mid(row, 10).toLongLong();
        CHECK(pdf.mid(offset).startsWith(QByteArray::number(n) + " 0 obj"));
        ++objects;
    }
    CHECK(objects > 40);
    CHECK(pdf.contains("/CreationDate (D:20260210000000Z)"));
    CHECK_THROWS_AS(ui::paper::with_date("no PDF", sheet_date), Problem);
}

TEST_CASE("all cars go into a folder, one file each", "[sheet][file]") {
    const QTemporaryDir folder;
    const Ran ran =
        run_program({"sheet", demo_path(), "--out", in(folder, "sheets/"), "--date", "2026-02-10"});
    CHECK(ran.exit == 0);
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(in(folder, "sheets")))
        names.push_back(entry.path().filename().string());
    std::sort(names.begin(), names.end());
    CHECK(names == std::vector<std::string>{"Bittern.pdf", "Swift.pdf", "Wagtail.pdf"});
}

TEST_CASE("one page as a picture", "[sheet][file]") {
    const QTemporaryDir folder;
    const std::string out = in(folder, "page.png");
    CHECK(run_program({"sheet", demo_path(), "--car", "Swift", "--out", out, "--page", "2"}).exit == 0);
    const QImage picture(QString::fromStdString(out));
    // A4 at 200 dots an inch.
    CHECK(picture.size() == QSize(1654, 2339));
    int dark = 0;
    for (int y = 0; y < picture.height(); y += 3)
        for (int x = 0; x < picture.width(); x += 3)
            dark += qGray(picture.pixel(x, y)) < 128;
    CHECK(dark > 1000);
    CHECK(run_program({"sheet", demo_path(), "--car", "Swift", "--out", out, "--page", "99"}).exit == 2);
}

TEST_CASE("wrong calls and places that cannot be written are told, and leave nothing behind",
          "[sheet][file]") {
    const QTemporaryDir folder;
    const std::string out = in(folder, "a.pdf");
    const std::vector<std::vector<std::string>> wrong = {
        {"sheet", demo_path(), "--car", "Swift"},
        {"sheet", demo_path(), "--out", out},
        {"sheet", demo_path(), "--car", "Swift", "--out", in(folder, "a.txt")},
        {"sheet", demo_path(), "--car", "Swift", "--out", out, "--paper", "a5"},
        {"sheet", demo_path(), "--car", "Swift", "--out", out, "--date", "10.2.2026"},
        {"sheet", demo_path(), "--car", "Swift", "--out", out, "--date", "2026-02-30"},
        {"sheet", demo_path(), "--car", "Swift", "--out", out, "--bar", "50"},
        {"sheet", demo_path(), "--car", "Swift", "--out", out, "--bar", "soon"},
        {"sheet", demo_path(), "--car", "Swift", "--out", out, "--page", "0"},
    };
    for (const auto& call : wrong)
        check_wrong_call(call);
    CHECK(run_program({"sheet", demo_path(), "--car", "Dodo", "--out", out}).exit == 1);
    CHECK(run_program({"sheet", in(folder, "none.ramp.json"), "--car", "Swift", "--out", out}).exit == 1);
    std::ofstream(in(folder, "bad.ramp.json")) << "{";
    CHECK(run_program({"sheet", in(folder, "bad.ramp.json"), "--out", in(folder, "x/")}).exit == 4);
    CHECK_FALSE(fs::exists(out));
    const Ran nowhere =
        run_program({"sheet", demo_path(), "--car", "Swift", "--out", in(folder, "no/such/place.pdf")});
    CHECK(nowhere.exit == 1);
    CHECK(nowhere.err.find("place.pdf") != std::string::npos);
    // Help names it, alone and in the list.
    CHECK(run_program({"--help"}).out.find("rampwright sheet PROJECT") != std::string::npos);
    CHECK(run_program({"sheet", "--help"}).out.find("--paper") != std::string::npos);
}

#include "paper/paper_desk.hpp"
#include "paper/paper_view.hpp"
#include "sheet/paint.hpp"
#include "support/bench.hpp"

#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QScrollBar>
#include <QTemporaryDir>
#include <QTest>
#include <catch2/catch.hpp>

#include <cmath>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

/// Free room around pages on the desk and between them, px.
constexpr int desk_margin = 14;

/// A page as it stands on the screen: the view scrolled past it, its pictures put together.
QImage page_on_screen(PaperView& view, std::size_t page) {
    const QSizeF size = paper::size_of(paper::Paper::a4) * view.pixels_per_mm();
    QImage whole(size.toSize(), QImage::Format_RGB32);
    whole.fill(Qt::white);
    const double top = desk_margin + double(page) * (size.height() + desk_margin);
    QScrollBar& bar = *view.verticalScrollBar();
    QPainter painter(&whole);
    for (double y = 0; y < size.height(); y += view.viewport()->height() - 2 * desk_margin) {
        bar.setValue(int(top + y) - desk_margin);
        const QImage seen = view.viewport()->grab().toImage();
        const double spare = view.viewport()->width() - size.width();
        const double left = spare > 2 * desk_margin ? spare / 2 : desk_margin;
        const QPoint corner(int(std::round(left)), int(std::round(top - bar.value())));
        // What lies within the view of this page.
        const QRect part = QRect(corner, whole.size()) & view.viewport()->rect();
        painter.drawImage(part.topLeft() - corner, seen, part);
    }
    return whole;
}

/// A page of a PDF by poppler, an independent reader.
QImage page_of_pdf(const QString& path, std::size_t page, double dots_per_mm) {
    const QString number = QString::number(page + 1);
    QProcess poppler;
    poppler.start(QStringLiteral("pdftoppm"),
                  {QStringLiteral("-r"), QString::number(dots_per_mm * 25.4, 'f', 4), QStringLiteral("-gray"),
                   QStringLiteral("-f"), number, QStringLiteral("-l"), number, path});
    REQUIRE(poppler.waitForFinished(60000));
    return QImage::fromData(poppler.readAllStandardOutput(), "PGM");
}

struct Compared {
    int dark = 0, missing = 0;
    double share() const { return dark ? double(missing) / dark : 0; }
};

/// Dots that are dark in `one`, and those of them that have no ink near in `other`.
///
/// Each of the two renderers places an edge to half a dot, and the PDF's page is whole points, 842 for
/// 841.89, which moves its ink by 0.04 mm, a third of a dot here: together less than one and a half. So a dot
/// that is more than five eighths dark in one picture has, within two dots, one that is at least a quarter
/// dark in the other. What is printed elsewhere, larger or not at all is farther off.
Compared compare(const QImage& one, const QImage& other) {
    constexpr int dark = 160, ink = 64, reach = 2;
    const QImage a = one.convertToFormat(QImage::Format_Grayscale8),
                 b = other.convertToFormat(QImage::Format_Grayscale8);
    const auto darkness = [](const QImage& image, int x, int y) { return 255 - image.constScanLine(y)[x]; };
    const int width = std::min(a.width(), b.width()), height = std::min(a.height(), b.height());
    Compared result;
    for (int y = reach; y < height - reach; ++y)
        for (int x = reach; x < width - reach; ++x) {
            if (darkness(a, x, y) < dark) continue;
            ++result.dark;
            bool near = false;
            for (int j = -reach; j <= reach && !near; ++j)
                for (int i = -reach; i <= reach && !near; ++i)
                    near = darkness(b, x + i, y + j) >= ink;
            result.missing += !near;
        }
    return result;
}

} // namespace

TEST_CASE("The pages on the screen are the PDF's", "[paper]") {
    const QTemporaryDir folder;
    // So wide that a page's width, which the view shows whole, is some dots a millimetre.
    Workbench bench(demo_path, {1900, 1000});
    bench.choose_car("Swift");
    bench.window->show_step(Step::paper);
    auto& view = bench.find<PaperView>(QStringLiteral("pages"));
    auto* desk = bench.session.findChild<PaperDesk*>();
    REQUIRE(desk);
    const double dots = view.pixels_per_mm();
    REQUIRE(dots > 6);
    const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
    desk->save_pdf(path);
    const std::size_t pages = view.page_count();
    REQUIRE(pages > 8);
    std::vector<QImage> shown, printed;
    for (std::size_t n = 0; n < pages; ++n) {
        shown.push_back(page_on_screen(view, n));
        printed.push_back(page_of_pdf(path, n, dots));
        REQUIRE(std::abs(printed.back().width() - shown.back().width()) <= 2);
    }
    for (std::size_t n = 0; n < pages; ++n) {
        CAPTURE(n + 1, dots);
        const Compared there = compare(shown[n], printed[n]), back = compare(printed[n], shown[n]);
        CHECK(there.dark > 2000);
        // A serif's tip or a crossing of hairlines may fall below the quarter: one dot in a thousand.
        CHECK(there.share() <= 0.001);
        CHECK(back.share() <= 0.001);
        // A wrong page, and the right one half a millimetre aside, are told.
        const QImage& wrong = printed[(n + 1) % pages];
        CHECK(compare(shown[n], wrong).share() > 0.05);
        const int aside = int(std::ceil(0.5 * dots));
        CHECK(compare(shown[n], printed[n].copy(aside, aside, shown[n].width(), shown[n].height())).share() >
              0.01);
    }
    // Another car's page under the same title.
    bench.choose_car("Wagtail");
    CHECK(compare(page_on_screen(view, 0), printed[0]).share() > 0.01);
}

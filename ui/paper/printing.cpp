#include "paper/printing.hpp"

#include "sheet/paint.hpp"

#include <QPageLayout>
#include <QPainter>
#include <QPrinter>

#include <algorithm>

namespace rampwright::ui {

void set_up_printer(QPrinter& printer, const paper::Sheet& sheet) {
    const QPageSize size(sheet.paper == paper::Paper::letter ? QPageSize::Letter : QPageSize::A4);
    printer.setResolution(1200);
    printer.setPageLayout(QPageLayout(size, QPageLayout::Portrait, QMarginsF(), QPageLayout::Millimeter));
    printer.setFullPage(true);
    printer.setDocName(sheet.title);
}

bool print_sheet(QPrinter& printer, const paper::Sheet& sheet) {
    int first = 1, last = static_cast<int>(sheet.pages.size());
    if (printer.printRange() == QPrinter::PageRange && printer.fromPage() > 0) {
        first = std::clamp(printer.fromPage(), 1, last);
        last = std::clamp(printer.toPage() > 0 ? printer.toPage() : last, first, last);
    }
    // The dialog may have changed the page: the origin must be the paper's corner again.
    printer.setFullPage(true);
    QPainter painter;
    if (!painter.begin(&printer)) return false;
    for (int n = first; n <= last; ++n) {
        if (n > first && !printer.newPage()) return false;
        painter.save();
        const double dots_per_mm = printer.resolution() / 25.4;
        painter.scale(dots_per_mm, dots_per_mm);
        paper::paint_page(painter, sheet.pages[static_cast<std::size_t>(n - 1)]);
        painter.restore();
    }
    return painter.end();
}

} // namespace rampwright::ui

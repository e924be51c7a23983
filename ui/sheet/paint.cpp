#include "sheet/paint.hpp"

#include "sheet/type.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/version.hpp>

#include <QBuffer>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>

#include <cmath>

namespace rampwright::ui::paper {
namespace {

QPen pen_of(const PathInk& ink) {
    if (ink.width <= 0) return Qt::NoPen;
    // Flat caps: a line ends where its point is.
    QPen pen(Qt::black, ink.width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
    // Lengths in mm; a pattern counts in pen widths.
    const auto dashes = [&](std::initializer_list<double> lengths) {
        QList<qreal> pattern;
        for (const double length : lengths)
            pattern << length / ink.width;
        pen.setDashPattern(pattern);
    };
    switch (ink.stroke) {
    case Stroke::solid:
        break;
    case Stroke::hidden:
        dashes({2.0, 0.9});
        break;
    case Stroke::centre:
        dashes({6.0, 0.9, 0.6, 0.9});
        break;
    case Stroke::phantom:
        dashes({5.0, 0.8, 0.6, 0.8, 0.6, 0.8});
        break;
    }
    return pen;
}

void paint_ink(QPainter& painter, const PathInk& ink) {
    painter.save();
    if (ink.clip) painter.setClipRect(*ink.clip);
    painter.setPen(pen_of(ink));
    painter.setBrush(ink.fill ? QBrush(QColor::fromRgbF(float(*ink.fill), float(*ink.fill), float(*ink.fill)))
                              : QBrush(Qt::NoBrush));
    painter.drawPath(ink.path);
    painter.restore();
}

void paint_ink(QPainter& painter, const TextInk& ink) {
    if (ink.cleared) painter.fillRect(ink.box.adjusted(-0.3, 0.2, 0.3, -0.2), Qt::white);
    painter.save();
    painter.scale(1 / dots_per_mm, 1 / dots_per_mm);
    painter.setPen(Qt::black);
    painter.setFont(font_of(ink.style));
    painter.drawText(QPointF(ink.box.left(), ink.baseline) * dots_per_mm, ink.text);
    painter.restore();
}

Problem cannot_make(const char* what) {
    return {Exit::could_not, "-", std::string("the ") + what + " could not be made",
            "free some memory and try again"};
}

} // namespace

void paint_page(QPainter& painter, const Page& page) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::TextAntialiasing);
    for (const Ink& ink : page.ink)
        std::visit([&](const auto& each) { paint_ink(painter, each); }, ink);
}

QByteArray to_pdf(const Sheet& sheet, const QDate& date) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(static_cast<int>(std::lround(dots_per_mm * 25.4)));
        const QPageSize size(sheet.paper == Paper::letter ? QPageSize::Letter : QPageSize::A4);
        writer.setPageLayout(QPageLayout(size, QPageLayout::Portrait, QMarginsF(), QPageLayout::Millimeter));
        writer.setTitle(sheet.title);
        const std::string_view number = version();
        writer.setCreator(QStringLiteral("rampwright ") +
                          QString::fromUtf8(number.data(), static_cast<qsizetype>(number.size())));
        QPainter painter;
        if (!painter.begin(&writer)) throw cannot_make("PDF");
        for (std::size_t i = 0; i < sheet.pages.size(); ++i) {
            if (i > 0 && !writer.newPage()) throw cannot_make("PDF");
            painter.save();
            painter.scale(dots_per_mm, dots_per_mm);
            paint_page(painter, sheet.pages[i]);
            painter.restore();
        }
        if (!painter.end()) throw cannot_make("PDF");
    }
    return with_date(std::move(bytes), date);
}

QImage to_picture(const Sheet& sheet, std::size_t page, double dots_per_inch) {
    const double scale = dots_per_inch / 25.4;
    const QSizeF size = size_of(sheet.paper) * scale;
    QImage image(static_cast<int>(std::lround(size.width())), static_cast<int>(std::lround(size.height())),
                 QImage::Format_RGB32);
    if (image.isNull()) throw cannot_make("picture");
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.scale(scale, scale);
    paint_page(painter, sheet.pages.at(page));
    return image;
}

QByteArray to_png(const Sheet& sheet, std::size_t page, double dots_per_inch) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    const QImage grey = to_picture(sheet, page, dots_per_inch).convertToFormat(QImage::Format_Grayscale8);
    if (!grey.save(&buffer, "PNG")) throw cannot_make("picture");
    return bytes;
}

} // namespace rampwright::ui::paper

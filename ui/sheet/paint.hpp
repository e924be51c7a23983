#pragma once

#include "sheet/ink.hpp"

#include <QByteArray>
#include <QDate>
#include <QImage>

class QPainter;

namespace rampwright::ui::paper {

/// Paints a page; the painter's unit is 1 mm, its origin the paper's upper left corner.
void paint_page(QPainter& painter, const Page& page);

/// The whole sheet as a PDF at true size, fonts embedded. The same sheet and date give the same bytes.
/// @throws Problem where it cannot be made.
QByteArray to_pdf(const Sheet& sheet, const QDate& date);

/// One page as a picture on white. @param page from 0. @param dots_per_inch of the picture.
QImage to_picture(const Sheet& sheet, std::size_t page, double dots_per_inch);

/// The same as the bytes of a PNG file. @throws Problem where it cannot be made.
QByteArray to_png(const Sheet& sheet, std::size_t page, double dots_per_inch);

/// Sets the date of making of a PDF to midnight of `date`, whatever clock and time zone it was made in.
/// The cross-reference table follows. @throws Problem where the bytes are not as the toolkit writes them.
QByteArray with_date(QByteArray pdf, const QDate& date);

} // namespace rampwright::ui::paper

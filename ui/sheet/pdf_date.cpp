#include "sheet/paint.hpp"

#include <rampwright/core/problem.hpp>

namespace rampwright::ui::paper {
namespace {

Problem not_as_written() {
    return {Exit::could_not, "-", "the PDF is not laid out as expected, so its date cannot be set",
            "report this with the version of the Qt libraries"};
}

qsizetype find_or_throw(const QByteArray& bytes, const char* mark, qsizetype from, bool last = false) {
    const qsizetype at = last ? bytes.lastIndexOf(mark) : bytes.indexOf(mark, from);
    if (at < 0) throw not_as_written();
    return at;
}

/// Moves the offsets of the cross-reference table (PDF 1.7, 7.5.4: ten digits each) that lie beyond `from`.
void shift_offsets(QByteArray& pdf, qsizetype from, qsizetype by) {
    const qsizetype start = find_or_throw(pdf, "startxref\n", 0, true) + 10;
    qsizetype end = start;
    while (end < pdf.size() && pdf[end] >= '0' && pdf[end] <= '9')
        ++end;
    const qsizetype table = pdf.mid(start, end - start).toLongLong() + by;
    if (pdf.mid(table, 5) != "xref\n") throw not_as_written();
    const qsizetype trailer = find_or_throw(pdf, "trailer", table);
    for (qsizetype row = find_or_throw(pdf, "\n", table + 5) + 1; row + 20 <= trailer; row += 20) {
        const qsizetype offset = pdf.mid(row, 10).toLongLong();
        if (offset > from) pdf.replace(row, 10, QByteArray::number(offset + by).rightJustified(10, '0'));
    }
    pdf.replace(start, end - start, QByteArray::number(table));
}

} // namespace

QByteArray with_date(QByteArray pdf, const QDate& date) {
    const QByteArray key = "/CreationDate (";
    const qsizetype from = find_or_throw(pdf, key.constData(), 0) + key.size();
    const qsizetype end = find_or_throw(pdf, ")", from);
    const QByteArray text = "D:" + date.toString(QStringLiteral("yyyyMMdd")).toLatin1() + "000000Z";
    pdf.replace(from, end - from, text);
    if (const qsizetype by = text.size() - (end - from); by != 0) shift_offsets(pdf, from, by);
    return pdf;
}

} // namespace rampwright::ui::paper

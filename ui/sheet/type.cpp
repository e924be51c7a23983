#include "sheet/type.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <QFontDatabase>
#include <QFontMetricsF>

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace rampwright::ui::paper {
namespace {

QFont make_font(const TextStyle& style) {
    if (QFontDatabase::families().isEmpty())
        throw Problem(Exit::could_not, "-",
                      Core::tr("no typeface is installed, and the sheet has words on it"),
                      Core::tr("install one, for instance the package fonts-dejavu-core"));
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setStyleHint(QFont::SansSerif);
    font.setPixelSize(static_cast<int>(std::lround(style.points / 72 * 25.4 * dots_per_mm)));
    font.setBold(style.bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    // A touch of spacing keeps "fl" two letters: a ligature could not be found when searching the PDF.
    font.setLetterSpacing(QFont::PercentageSpacing, 100.5);
    return font;
}

struct Type {
    QFont font;
    QFontMetricsF metrics;
};

const Type& type_of(const TextStyle& style) {
    // Never freed: fonts may not outlive the toolkit's application, and static objects do.
    static auto& types = *new std::map<std::pair<int, bool>, Type>;
    const auto key = std::pair(static_cast<int>(std::lround(style.points * 100)), style.bold);
    auto found = types.find(key);
    if (found == types.end()) {
        const QFont font = make_font(style);
        found = types.emplace(key, Type{font, QFontMetricsF(font)}).first;
    }
    return found->second;
}

/// How many characters of `text` fit into `width`; at least one.
qsizetype fitting(const QString& text, const TextStyle& style, double width) {
    qsizetype low = 1, high = text.size();
    while (low < high) {
        const qsizetype middle = (low + high + 1) / 2;
        if (width_of(text.left(middle), style) <= width)
            low = middle;
        else
            high = middle - 1;
    }
    if (low < text.size() && low > 1 && text[low - 1].isHighSurrogate()) --low;
    return low;
}

void wrap_paragraph(const QString& text, const TextStyle& style, double width, QStringList& lines) {
    const qsizetype first = lines.size();
    QString line;
    for (QString word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
        if (width_of(longer, style) <= width) {
            line = longer;
            continue;
        }
        if (!line.isEmpty()) lines << line;
        while (width_of(word, style) > width && word.size() > 1) {
            const qsizetype part = fitting(word, style, width);
            if (part >= word.size()) break;
            lines << word.left(part);
            word = word.mid(part);
        }
        line = word;
    }
    if (!line.isEmpty() || lines.size() == first) lines << line;
}

} // namespace

const QFont& font_of(const TextStyle& style) {
    return type_of(style).font;
}

double width_of(const QString& text, const TextStyle& style) {
    return type_of(style).metrics.horizontalAdvance(text) / dots_per_mm;
}

double ascent_of(const TextStyle& style) {
    return type_of(style).metrics.ascent() / dots_per_mm;
}

double descent_of(const TextStyle& style) {
    return type_of(style).metrics.descent() / dots_per_mm;
}

double leading_of(const TextStyle& style) {
    return (ascent_of(style) + descent_of(style)) * 1.06;
}

QStringList wrapped(const QString& text, const TextStyle& style, double width) {
    QStringList lines;
    for (const QString& paragraph : text.split(QLatin1Char('\n')))
        wrap_paragraph(paragraph, style, width, lines);
    return lines;
}

QString elided(const QString& text, const TextStyle& style, double width) {
    QString line = text.simplified();
    if (width_of(line, style) <= width) return line;
    const QString mark = QStringLiteral("…");
    while (!line.isEmpty() && width_of(line + mark, style) > width)
        line = line.left(std::min(line.size() - 1, fitting(line, style, width)));
    return line.trimmed() + mark;
}

} // namespace rampwright::ui::paper

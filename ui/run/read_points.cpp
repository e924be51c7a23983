#include "run/lane_page.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/units/entry.hpp>

#include <QRegularExpression>
#include <QStringList>

namespace rampwright::ui {

std::vector<Vec2> read_points(const QString& text, UnitSystem units) {
    std::vector<Vec2> points;
    int line = 0;
    static const QRegularExpression breaks(QStringLiteral("\\r\\n?|\\n"));
    // A tab or a semicolon parts for certain; else white space, with or without a comma before it.
    static const QRegularExpression sure(QStringLiteral("\\s*[\\t;]\\s*")),
        loose(QStringLiteral("\\s*,\\s+|\\s+(?=[-+\\x{2212}.\\d])|(?<=[a-z]),|(?<=\\d),(?=[-+]?\\d*\\.)"));
    for (const QString& row : text.split(breaks)) {
        ++line;
        const QString trimmed = row.trimmed();
        if (trimmed.isEmpty() || trimmed.startsWith(QLatin1Char('#'))) continue;
        QStringList parts = trimmed.split(sure, Qt::SkipEmptyParts);
        if (parts.size() == 1) parts = trimmed.split(loose, Qt::SkipEmptyParts);
        const std::string where = "line " + std::to_string(line);
        if (parts.size() != 2)
            throw Problem(Exit::could_not, where,
                          Core::tr("\"{text}\" is not two numbers", {{"text", trimmed.toStdString()}}),
                          Core::tr("give X and Z in each line, parted by a space or a tab"));
        const auto number = [&](QString word) {
            try {
                word.replace(QChar(0x2212), QLatin1Char('-'));
                return parse_entry(word.trimmed().toStdString(), Quantity::length, units);
            } catch (const Problem& problem) {
                throw Problem(Exit::could_not, where, problem.wrong(), problem.remedy());
            }
        };
        points.emplace_back(number(parts[0]), number(parts[1]));
    }
    return points;
}

} // namespace rampwright::ui

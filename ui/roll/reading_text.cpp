#include "roll/reading_text.hpp"

#include "roll/measured_entry.hpp"

#include <rampwright/units/entry.hpp>

#include <QRegularExpression>
#include <QStringList>

#include <algorithm>

namespace rampwright::ui {

std::vector<Vec2> read_reading_text(const QString& text, UnitSystem units) {
    std::vector<Vec2> readings;
    const QStringList lines = text.split(QLatin1Char('\n'));
    static const QRegularExpression gap(QStringLiteral("[\\s;]+"));
    for (qsizetype i = 0; i < lines.size(); ++i) {
        const QStringList cells = lines[i].split(gap, Qt::SkipEmptyParts);
        if (cells.isEmpty()) continue;
        const auto refuse = [&] {
            throw mend_reading(
                MeasuredEntry::tr("Line %1 is not a time and a speed: “%2”").arg(i + 1).arg(lines[i]),
                MeasuredEntry::tr("write two numbers with a space, a tab or a semicolon between"));
        };
        const auto number = [&](const QString& cell) {
            return parse_entry(cell.toStdString(), Quantity::plain, units);
        };
        // A heading names its columns; a reading with a slip of the pen is not one.
        const bool wordy =
            std::none_of(lines[i].begin(), lines[i].end(), [](QChar c) { return c.isDigit(); });
        if (i == 0 && wordy) continue;
        if (cells.size() != 2) refuse();
        try {
            readings.emplace_back(number(cells[0]), number(cells[1]));
        } catch (const EntryError&) {
            refuse();
        }
        if (readings.size() > 1 && !(readings.back().x() > readings[readings.size() - 2].x()))
            throw mend_reading(MeasuredEntry::tr("The times do not rise"),
                               MeasuredEntry::tr("write the readings in the order of time"));
    }
    return readings;
}

QString reading_text(const std::vector<Vec2>& readings) {
    constexpr int digits = 12;
    QStringList lines;
    for (const Vec2& reading : readings)
        lines << QString::number(reading.x(), 'g', digits) + QStringLiteral("  ") +
                     QString::number(reading.y(), 'g', digits);
    return lines.join(QLatin1Char('\n'));
}

} // namespace rampwright::ui

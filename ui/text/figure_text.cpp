#include "text/figure_text.hpp"

#include <rampwright/units/format.hpp>

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::Figures)
};

QString signed_text(double si, Quantity quantity, UnitSystem units, const FormatOptions& options) {
    const QString text = QString::fromStdString(format(si, quantity, units, options));
    if (text == QString::fromStdString(format(0, quantity, units, options))) return {};
    return si > 0 ? QStringLiteral("+") + text : text;
}

} // namespace

QString quantity_text(double si, Quantity quantity, UnitSystem units) {
    return QString::fromStdString(format(si, quantity, units));
}

QString change_text(double si, Quantity quantity, UnitSystem units) {
    return signed_text(si, quantity, units, {});
}

QString heat_change_text(double seconds, UnitSystem units) {
    FormatOptions options;
    options.unit = find_unit("ms");
    options.decimals = 1;
    return signed_text(seconds, Quantity::time, units, options);
}

QString row_text(const std::vector<TableRow>& rows, std::string_view code) {
    const auto found =
        std::find_if(rows.begin(), rows.end(), [&](const TableRow& row) { return row.code == code; });
    return found == rows.end() ? QStringLiteral("–") : QString::fromStdString(found->value);
}

QString mass_left_text(const Figures& figures, UnitSystem units) {
    if (!figures.scale) return {};
    const double margin = figures.scale->margin;
    const QString amount = quantity_text(std::abs(margin), Quantity::mass, units);
    return margin > 0 ? Text::tr("%1 left").arg(amount) : Text::tr("%1 too much").arg(amount);
}

QString severity_word(Severity severity) {
    switch (severity) {
    case Severity::breach:
        return Text::tr("Breaks a rule");
    case Severity::warning:
        return Text::tr("Warning");
    case Severity::note:
        break;
    }
    return Text::tr("Note");
}

QString plain_text(const Problem& problem) {
    const QString wrong = QString::fromStdString(problem.wrong()),
                  remedy = QString::fromStdString(problem.remedy());
    return remedy.isEmpty() ? wrong : Text::tr("%1; %2").arg(wrong, remedy);
}

QString not_taken(const QString& why) {
    return Text::tr("Not taken: %1").arg(why);
}

QString problem_text(const Problem& problem) {
    QString place = QString::fromStdString(problem.where());
    if (place == QStringLiteral("-")) place.clear();
    const QString sentence = plain_text(problem);
    return place.isEmpty() ? sentence : Text::tr("%1: %2").arg(place, sentence);
}

} // namespace rampwright::ui

#include "sheet/words.hpp"

#include <rampwright/units/format.hpp>

namespace rampwright::ui::paper {
namespace {

QString number(double si, Quantity quantity, const char* unit, int decimals, bool with_unit) {
    return from_utf8(format(si, quantity, UnitSystem::metric,
                            {.unit = find_unit(unit), .decimals = decimals, .with_unit = with_unit}));
}

} // namespace

QString from_utf8(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString Words::length(double si) const {
    const QString mm = number(si, Quantity::length, "mm", 1, true);
    if (units == UnitSystem::metric) return mm;
    return QStringLiteral("%1 (%2)").arg(number(si, Quantity::length, "in", 3, true), mm);
}

QString Words::bare_length(double si) const {
    return units == UnitSystem::metric ? number(si, Quantity::length, "mm", 1, false)
                                       : number(si, Quantity::length, "in", 3, false);
}

QString Words::length_unit() const {
    return units == UnitSystem::metric ? QStringLiteral("mm") : QStringLiteral("in");
}

QString Words::grams(double si, bool with_unit) {
    return number(si, Quantity::mass, "g", 1, with_unit);
}

QString Words::ounces(double si, bool with_unit) {
    return number(si, Quantity::mass, "oz", 3, with_unit);
}

QString Words::both_masses(double si) {
    return QStringLiteral("%1 (%2)").arg(grams(si), ounces(si));
}

QString Words::angle(double si) {
    return number(si, Quantity::angle, "°", 2, true);
}

QString Words::value(double si, Quantity quantity) const {
    return from_utf8(format(si, quantity, units));
}

} // namespace rampwright::ui::paper

#include "sheet/words.hpp"

#include <rampwright/units/format.hpp>
#include <rampwright/units/reading.hpp>

namespace rampwright::ui::paper {
namespace {

QString number(double si, Quantity quantity, UnitSystem units, bool with_unit) {
    return from_utf8(format_reading(si, quantity, units, with_unit));
}

/// As many decimals for every mass, so that a column lines up.
QString column_mass(double si, UnitSystem units) {
    return from_utf8(format(si, Quantity::mass, units, {.with_unit = false}));
}

UnitSystem other(UnitSystem units) {
    return units == UnitSystem::metric ? UnitSystem::inch_ounce : UnitSystem::metric;
}

/// The person's unit, and where that is none of the metre's the one that is.
QString with_metric(double si, Quantity quantity, UnitSystem units) {
    const QString metric = number(si, quantity, UnitSystem::metric, true);
    if (units == UnitSystem::metric) return metric;
    return QStringLiteral("%1 (%2)").arg(number(si, quantity, units, true), metric);
}

} // namespace

QString from_utf8(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString Words::length(double si) const {
    return with_metric(si, Quantity::length, units);
}

QString Words::bare_length(double si) const {
    return number(si, Quantity::length, units, false);
}

QString Words::length_unit() const {
    return from_utf8(default_unit(Quantity::length, units).symbol);
}

QString Words::mass(double si) const {
    return with_metric(si, Quantity::mass, units);
}

QString Words::bare_mass(double si) const {
    return column_mass(si, units);
}

QString Words::mass_unit() const {
    return from_utf8(default_unit(Quantity::mass, units).symbol);
}

QString Words::second_mass(double si) const {
    return column_mass(si, other(units));
}

QString Words::second_mass_unit() const {
    return from_utf8(default_unit(Quantity::mass, other(units)).symbol);
}

QString Words::both_masses(double si) const {
    if (units == UnitSystem::inch_ounce) return mass(si);
    return QStringLiteral("%1 (%2)").arg(mass(si), number(si, Quantity::mass, UnitSystem::inch_ounce, true));
}

QString Words::angle(double si) {
    return number(si, Quantity::angle, UnitSystem::metric, true);
}

QString Words::value(double si, Quantity quantity) const {
    return from_utf8(format(si, quantity, units));
}

} // namespace rampwright::ui::paper

#pragma once

#include <rampwright/project/project.hpp>
#include <rampwright/units/quantity.hpp>

#include <QCoreApplication>
#include <QString>

namespace rampwright::ui::paper {

/// The sheet's words and numbers; numbers go through the core's one formatter, values are SI.
struct Words {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::Sheet)
public:
    UnitSystem units = UnitSystem::metric;

    /// "18.2 mm"; where people read inches "0.717 in (18.2 mm)": a workshop rule has either.
    QString length(double si) const;
    /// The same without a unit, in mm or in, for drawings and columns that name it.
    QString bare_length(double si) const;
    QString length_unit() const;
    /// "53.9 g", "1.901 oz", and both.
    static QString grams(double si, bool with_unit = true);
    static QString ounces(double si, bool with_unit = true);
    static QString both_masses(double si);
    /// "2.5°"
    static QString angle(double si);
    QString value(double si, Quantity quantity) const;
};

QString from_utf8(std::string_view text);

} // namespace rampwright::ui::paper

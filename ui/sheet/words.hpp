#pragma once

#include <rampwright/project/project.hpp>
#include <rampwright/units/quantity.hpp>

#include <QCoreApplication>
#include <QString>

namespace rampwright::ui::paper {

/// The sheet's words and numbers; numbers go through the core's one formatter, values are SI.
///
/// One rule for units: what the person reads comes first. In running text, where they read inches and ounces,
/// millimetres and grams follow in brackets, since a rule, a bit or a scale may have only those; columns and
/// drawings name their one unit. Only the weight schedule and the ballast map list grams and ounces both.
struct Words {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::Sheet)
public:
    UnitSystem units = UnitSystem::metric;

    /// "18.2 mm"; where people read inches "0.717 in (18.2 mm)".
    QString length(double si) const;
    /// The same without a unit, in mm or in, for drawings and columns that name it.
    QString bare_length(double si) const;
    QString length_unit() const;
    /// "53.9 g"; where people read ounces "1.901 oz (53.9 g)".
    QString mass(double si) const;
    QString bare_mass(double si) const;
    QString mass_unit() const;
    /// The other unit, for the lists that have both.
    QString second_mass(double si) const;
    QString second_mass_unit() const;
    /// "53.9 g (1.901 oz)", the person's first.
    QString both_masses(double si) const;
    /// "2.5°"
    static QString angle(double si);
    QString value(double si, Quantity quantity) const;
};

QString from_utf8(std::string_view text);

} // namespace rampwright::ui::paper

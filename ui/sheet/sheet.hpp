#pragma once

#include "sheet/ink.hpp"

#include <rampwright/results/figures.hpp>

#include <QDate>

namespace rampwright::ui::paper {

/// How long the check bar must come out on paper, mm.
inline constexpr double bar_length = 100;
/// What a printed bar may measure: beyond it the page was fitted to something else, not printed at scale.
inline constexpr double least_bar = 80, greatest_bar = 120;

/// What a build sheet is made of.
struct Request {
    const Project& project;
    std::size_t car = 0;
    const Figures& figures; ///< of that car
    QString file;           ///< name of the project file, as the margins say it
    QDate date;
    Paper paper = Paper::a4;
    double printed_bar = bar_length; ///< mm that the 100 mm bar measured on this printer's paper
};

/// Lays the whole sheet out; some hundredths of a second.
/// @throws Problem where the car cannot be put together, or no typeface is installed.
Sheet make_sheet(const Request& request);

} // namespace rampwright::ui::paper

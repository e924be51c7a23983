#pragma once

#include <rampwright/body/path_data.hpp>

#include <QByteArray>
#include <QString>

#include <vector>

/// Outlines in drawing files.
namespace rampwright::ui {

/// A closed line of a drawing file, in mm with y upward; where it stands on the page says nothing.
struct DrawnShape {
    DrawnLine line;
    QString name;              ///< its title or id, or its group's; may be empty
    Eigen::Vector2d low, high; ///< corners of the box around it
    double area = 0;           ///< mm²
};

struct DrawnFile {
    std::vector<DrawnShape> shapes; ///< largest first
    bool sized = false;             ///< states its size in units of length; else 96 user units are an inch
    int open_lines = 0;             ///< lines that no other lines bring back to where they begin, left out
    int references = 0;             ///< copies of other elements ("use"), left out
};

inline constexpr qsizetype largest_drawing = 32 << 20; ///< bytes

/// Every closed line of an SVG 1.1 file: path, rect, circle, ellipse, polygon and polyline, with width,
/// height, viewBox, transforms (as attributes and in a style) and nested svg elements. Text, pictures, clips,
/// masks, markers, patterns and what is not displayed are no lines. Ends within 0.01 mm of each other count
/// as joined, of lines drawn one by one too.
/// @throws Problem (not_ours) with the line of the file, where it is no SVG, is damaged, or holds no closed
///         line.
DrawnFile read_svg(const QByteArray& text);

/// The same of a file. @throws Problem naming it.
DrawnFile read_svg_file(const QString& path);

} // namespace rampwright::ui

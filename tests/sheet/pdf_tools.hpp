#pragma once

#include "sheet/sheet.hpp"

#include <QTemporaryDir>

#include <cstdint>
#include <string>
#include <vector>

/// What poppler's tools make of a PDF: an independent reader.
namespace rampwright::test {

/// A PDF in a file of its own, removed at the end.
class PdfFile {
public:
    explicit PdfFile(const QByteArray& bytes);
    const std::string& path() const { return path_; }

    /// The text of all pages, lines as they stand beside each other.
    std::string text() const;
    /// The same in the order in which it was set.
    std::string raw_text() const;
    /// What pdffonts or pdfinfo print.
    std::string report(const std::string& tool) const;

private:
    QTemporaryDir folder_;
    std::string path_;
};

/// A part of a page in grey at 1200 dots an inch.
struct Raster {
    QRectF window; ///< of the page, mm
    int width = 0, height = 0;
    std::vector<std::uint8_t> grey;
    double darkness(int column, int row) const {
        return 255 - grey[std::size_t(row) * std::size_t(width) + std::size_t(column)];
    }
};
Raster raster(const PdfFile& file, std::size_t page, const QRectF& window);

/// The strokes that a line across the page meets, by the centre of their darkness and their width, mm.
struct Crossing {
    double at = 0, width = 0;
};
std::vector<Crossing> crossings_down(const Raster& picture, double x);   ///< along y at this x
std::vector<Crossing> crossings_across(const Raster& picture, double y); ///< along x at this y

/// The demo's Swift stretched to a block that no page holds, m; its front axle where it was in proportion.
Project long_car(double length, double width, double height);

/// The sheet of a car of a project, with its figures, dated 2026-02-10.
ui::paper::Sheet sheet_of(const Project& project, std::size_t car, ui::paper::Paper paper,
                          double printed_bar = ui::paper::bar_length);
inline const QDate sheet_date(2026, 2, 10);

} // namespace rampwright::test

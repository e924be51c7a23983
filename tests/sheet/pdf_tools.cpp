#include "sheet/pdf_tools.hpp"

#include "support/demo.hpp"

#include <QFile>
#include <QProcess>

#include <cmath>
#include <stdexcept>

namespace rampwright::test {
namespace {

constexpr double dots = 1200 / 25.4; // a mm

QByteArray output_of(const QString& tool, const QStringList& words) {
    QProcess process;
    process.start(tool, words);
    if (!process.waitForFinished(120000) || process.exitCode() != 0)
        throw std::runtime_error(tool.toStdString() + ": " + process.readAllStandardError().toStdString());
    return process.readAllStandardOutput();
}

/// Runs of darkness above a tenth, with their centre of mass: exact to a part of a dot.
template <class Darkness>
std::vector<Crossing> find_crossings(int count, double start, const Darkness& darkness) {
    std::vector<Crossing> found;
    double sum = 0, moment = 0;
    for (int i = 0; i <= count; ++i) {
        const double dark = i < count ? darkness(i) : 0;
        if (dark > 25) {
            sum += dark;
            moment += dark * (i + 0.5);
        } else if (sum > 0) {
            found.push_back({start + moment / sum / dots, sum / 255 / dots});
            sum = moment = 0;
        }
    }
    return found;
}

} // namespace

PdfFile::PdfFile(const QByteArray& bytes)
    : path_(folder_.filePath(QStringLiteral("sheet.pdf")).toStdString()) {
    QFile file(QString::fromStdString(path_));
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size())
        throw std::runtime_error("cannot write " + path_);
}

std::string PdfFile::text() const {
    return output_of(QStringLiteral("pdftotext"),
                     {QStringLiteral("-layout"), QString::fromStdString(path_), QStringLiteral("-")})
        .toStdString();
}

std::string PdfFile::raw_text() const {
    return output_of(QStringLiteral("pdftotext"),
                     {QStringLiteral("-raw"), QString::fromStdString(path_), QStringLiteral("-")})
        .toStdString();
}

std::string PdfFile::report(const std::string& tool) const {
    return output_of(QString::fromStdString(tool), {QString::fromStdString(path_)}).toStdString();
}

Raster raster(const PdfFile& file, std::size_t page, const QRectF& window) {
    const auto dot = [](double mm) { return static_cast<int>(std::lround(mm * dots)); };
    const QString number = QString::number(page + 1);
    Raster picture;
    const int left = dot(window.left()), top = dot(window.top());
    picture.width = dot(window.width());
    picture.height = dot(window.height());
    picture.window = QRectF(left / dots, top / dots, picture.width / dots, picture.height / dots);
    const QByteArray bytes = output_of(
        QStringLiteral("pdftoppm"),
        {QStringLiteral("-r"), QStringLiteral("1200"), QStringLiteral("-gray"), QStringLiteral("-f"), number,
         QStringLiteral("-l"), number, QStringLiteral("-x"), QString::number(left), QStringLiteral("-y"),
         QString::number(top), QStringLiteral("-W"), QString::number(picture.width), QStringLiteral("-H"),
         QString::number(picture.height), QString::fromStdString(file.path())});
    // "P5 width height 255" and one byte a dot.
    const qsizetype size = qsizetype(picture.width) * picture.height;
    if (!bytes.startsWith("P5") || bytes.size() < size) throw std::runtime_error("not a grey picture");
    const QByteArray dots_of = bytes.right(size);
    picture.grey.assign(dots_of.begin(), dots_of.end());
    return picture;
}

std::vector<Crossing> crossings_down(const Raster& picture, double x) {
    const int column = static_cast<int>((x - picture.window.left()) * dots);
    if (column < 0 || column >= picture.width) throw std::out_of_range("beside the picture");
    return find_crossings(picture.height, picture.window.top(),
                          [&](int row) { return picture.darkness(column, row); });
}

std::vector<Crossing> crossings_across(const Raster& picture, double y) {
    const int row = static_cast<int>((y - picture.window.top()) * dots);
    if (row < 0 || row >= picture.height) throw std::out_of_range("beside the picture");
    return find_crossings(picture.width, picture.window.left(),
                          [&](int column) { return picture.darkness(column, row); });
}

Project long_car(double length, double width, double height) {
    Project project = demo_project();
    CarPlan& car = project.cars[2];
    const double along = length / car.body.block.x(), across = width / car.body.block.y();
    car.body.block = {length, width, height};
    for (PlanPoint& point : car.body.profile)
        point.at.x() *= along;
    for (PlanPoint& point : car.body.plan) {
        point.at.x() *= along;
        point.at.y() *= across;
    }
    car.axles.front_x *= along;
    return project;
}

ui::paper::Sheet sheet_of(const Project& project, std::size_t car, ui::paper::Paper paper,
                          double printed_bar) {
    const Figures figures = compute_figures(project, car);
    return ui::paper::make_sheet(
        {project, car, figures, QStringLiteral("race.ramp.json"), sheet_date, paper, printed_bar});
}

} // namespace rampwright::test

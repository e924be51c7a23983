#include "trace/svg_file.hpp"

#include "trace/join_lines.hpp"
#include "trace/svg_numbers.hpp"

#include <rampwright/body/fit_outline.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <QCoreApplication>
#include <QFile>
#include <QXmlStreamReader>

#include <algorithm>
#include <cmath>
#include <set>

namespace rampwright::ui {
namespace {

using Eigen::Affine2d;
using Eigen::Vector2d;

constexpr std::size_t most_pieces = 300000, most_shapes = 200;
constexpr double joined = 0.01; // mm
constexpr int deepest = 200;

/// What an element inherits.
struct Surroundings {
    Affine2d to_mm = Affine2d::Identity();
    QString name;
};

DrawnLine mapped(DrawnLine line, const Affine2d& by) {
    for (OutlinePiece& piece : line.pieces)
        for (Vector2d& p : piece.control)
            p = by * p;
    return line;
}

double area_of(const std::vector<Vector2d>& polygon) {
    double twice = 0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Vector2d &a = polygon[i], &b = polygon[(i + 1) % polygon.size()];
        twice += a.x() * b.y() - a.y() * b.x();
    }
    return std::abs(twice) / 2;
}

class SvgReader {
public:
    explicit SvgReader(const QByteArray& text) : xml_(text) {}

    DrawnFile read() {
        if (!xml_.readNextStartElement()) refuse_xml();
        if (xml_.name() != QLatin1String("svg"))
            refuse(Core::tr("this is no SVG drawing"), Core::tr("save the drawing as plain SVG"));
        std::vector<Surroundings> around{root()};
        while (!xml_.atEnd()) {
            switch (xml_.readNext()) {
            case QXmlStreamReader::StartElement:
                start(around);
                break;
            case QXmlStreamReader::EndElement:
                if (!around.empty()) around.pop_back();
                first_shape_inside_ = file_.shapes.size();
                break;
            default:
                break;
            }
        }
        if (xml_.hasError()) refuse_xml();
        finish();
        return std::move(file_);
    }

private:
    [[noreturn]] void refuse(const std::string& wrong, const std::string& remedy) const {
        throw Problem(Exit::not_ours, "line " + std::to_string(xml_.lineNumber()), wrong, remedy);
    }
    [[noreturn]] void refuse_xml() const {
        if (!xml_.hasError()) refuse(Core::tr("the file is empty"), Core::tr("choose an SVG drawing"));
        throw Problem(
            Exit::not_ours,
            "line " + std::to_string(xml_.lineNumber()) + ", column " + std::to_string(xml_.columnNumber()),
            Core::tr("the file is damaged or no SVG: {why}", {{"why", xml_.errorString().toStdString()}}),
            Core::tr("save the drawing again as plain SVG"));
    }

    std::string attribute(const char* name) const {
        return xml_.attributes().value(QLatin1String(name)).toString().toStdString();
    }
    /// A problem of an attribute's text, told with the file's line.
    template <class Parse>
    auto of_attribute(const char* name, Parse parse) const {
        try {
            return parse(attribute(name));
        } catch (const Problem& problem) {
            throw Problem(Exit::not_ours,
                          "line " + std::to_string(xml_.lineNumber()) + ", " + name + ", " + problem.where(),
                          problem.wrong(), problem.remedy());
        }
    }
    double length(const char* name, double otherwise = 0) const {
        const std::string text = attribute(name);
        if (text.empty()) return otherwise;
        return of_attribute(name, [](const std::string& t) { return read_svg_length(t).user_units; });
    }
    double size(const char* name) const {
        const double value = length(name);
        if (value < 0)
            refuse(Core::tr("{name} is below nothing", {{"name", name}}), Core::tr("save the drawing again"));
        return value;
    }

    /// User units of an inner coordinate system to those around: SVG 1.1, 7.8, alignment included.
    Affine2d viewport(const std::vector<double>& box, double width, double height) const {
        Affine2d by = Affine2d::Identity();
        if (box.size() != 4) return by;
        if (!(box[2] > 0 && box[3] > 0))
            refuse(Core::tr("the viewBox has no size"), Core::tr("save the drawing again"));
        Vector2d scale(width > 0 ? width / box[2] : 1, height > 0 ? height / box[3] : 1);
        if (!(width > 0)) scale.x() = scale.y();
        if (!(height > 0)) scale.y() = scale.x();
        const std::string keep = attribute("preserveAspectRatio");
        const auto says = [&keep](const char* word) { return keep.find(word) != std::string::npos; };
        if (!says("none")) scale.setConstant(says("slice") ? scale.maxCoeff() : scale.minCoeff());
        const Vector2d spare = Vector2d(width, height) - scale.cwiseProduct(Vector2d(box[2], box[3]));
        by.translate(Vector2d(spare.x() * (says("xMin")   ? 0
                                           : says("xMax") ? 1
                                                          : 0.5),
                              spare.y() * (says("YMin")   ? 0
                                           : says("YMax") ? 1
                                                          : 0.5)));
        by.scale(scale);
        by.translate(Vector2d(-box[0], -box[1]));
        return by;
    }

    Surroundings root() {
        const std::vector<double> box = of_attribute("viewBox", read_number_list);
        double sides[2] = {0, 0};
        const char* names[2] = {"width", "height"};
        for (int i = 0; i < 2; ++i) {
            const std::string text = attribute(names[i]);
            if (text.empty()) continue;
            const SvgLength side = of_attribute(names[i], read_svg_length);
            if (side.kind == SvgLength::Kind::share) continue;
            sides[i] = side.user_units;
            file_.sized = file_.sized || side.kind == SvgLength::Kind::real;
            if (!(sides[i] > 0))
                refuse(Core::tr("{name} is not above nothing", {{"name", names[i]}}),
                       Core::tr("save the drawing again"));
        }
        Affine2d to_mm = Affine2d::Identity();
        to_mm.scale(Vector2d(mm_per_user_unit, -mm_per_user_unit)); // y upward
        return {to_mm * viewport(box, sides[0], sides[1]), {}};
    }

    void start(std::vector<Surroundings>& around) {
        static const std::set<QString> containers{QStringLiteral("g"), QStringLiteral("a"),
                                                  QStringLiteral("svg"), QStringLiteral("switch")};
        const QString element = xml_.name().toString();
        if (element == QLatin1String("title")) {
            // Of the shape that it stands in, whose first child it is.
            const QString title = xml_.readElementText(QXmlStreamReader::IncludeChildElements).simplified();
            if (first_shape_inside_ < file_.shapes.size() && !title.isEmpty())
                file_.shapes.back().name = title;
            return;
        }
        const bool shown = xml_.attributes().value(QLatin1String("display")) != QLatin1String("none") &&
                           find_in_style(attribute("style"), "display") != "none";
        if (element == QLatin1String("use")) ++file_.references;
        static const std::set<QString> drawn{QStringLiteral("path"),    QStringLiteral("rect"),
                                             QStringLiteral("circle"),  QStringLiteral("ellipse"),
                                             QStringLiteral("polygon"), QStringLiteral("polyline"),
                                             QStringLiteral("line")};
        if (!shown || (!containers.contains(element) && !drawn.contains(element))) {
            xml_.skipCurrentElement();
            return;
        }
        if (around.size() >= deepest)
            refuse(Core::tr("the drawing is nested too deeply"), Core::tr("save it as plain SVG"));
        Surroundings here = around.back();
        here.to_mm = here.to_mm * transform();
        const QString id = xml_.attributes().value(QLatin1String("id")).toString();
        if (containers.contains(element) && !id.isEmpty()) here.name = id;
        first_shape_inside_ = file_.shapes.size();
        if (element == QLatin1String("svg")) {
            here.to_mm.translate(Vector2d(length("x"), length("y")));
            here.to_mm = here.to_mm *
                         viewport(of_attribute("viewBox", read_number_list), size("width"), size("height"));
        } else if (drawn.contains(element)) {
            const QString own = id.isEmpty() || !here.name.isEmpty() ? here.name : id;
            for (DrawnLine& line : lines_of(element))
                add(mapped(std::move(line), here.to_mm), own);
        }
        around.push_back(std::move(here));
    }

    /// A style's transform goes before the attribute (SVG 2, 8.5).
    Affine2d transform() const {
        const std::string style = attribute("style");
        const bool styled = !find_in_style(style, "transform").empty();
        if (!styled && attribute("transform").empty()) return Affine2d::Identity();
        if (!find_in_style(style, "transform-origin").empty() || !attribute("transform-origin").empty())
            refuse(Core::tr("a transform has an origin of its own"),
                   Core::tr("save the drawing as plain SVG"));
        if (!styled) return of_attribute("transform", read_svg_transform);
        return of_attribute("style", [](const std::string& text) {
            return read_css_transform(find_in_style(text, "transform"));
        });
    }

    std::vector<DrawnLine> lines_of(const QString& element) const {
        const auto points = [&] {
            const std::vector<double> list = of_attribute("points", read_number_list);
            if (list.size() % 2 != 0)
                refuse(Core::tr("the points have a coordinate too many"), Core::tr("save the drawing again"));
            std::vector<Vector2d> at;
            for (std::size_t i = 0; i + 1 < list.size(); i += 2)
                at.emplace_back(list[i], list[i + 1]);
            return at;
        };
        if (element == QLatin1String("path")) return of_attribute("d", read_path_data);
        if (element == QLatin1String("polygon")) return {drawn_polyline(points(), true)};
        if (element == QLatin1String("polyline")) return {drawn_polyline(points(), false)};
        if (element == QLatin1String("line"))
            return {drawn_polyline({{length("x1"), length("y1")}, {length("x2"), length("y2")}}, false)};
        if (element == QLatin1String("rect")) {
            const Vector2d across(size("width"), size("height"));
            // 9.2: what is not given is as the other; neither beyond half its side.
            Vector2d radii(length("rx", -1), length("ry", -1));
            if (radii.x() < 0) radii.x() = radii.y();
            if (radii.y() < 0) radii.y() = radii.x();
            radii = radii.cwiseMin(across / 2).cwiseMax(0);
            if (!(across.minCoeff() > 0)) return {};
            return {drawn_rectangle({length("x"), length("y")}, across, radii)};
        }
        const bool circle = element == QLatin1String("circle");
        const Vector2d radii(size(circle ? "r" : "rx"), size(circle ? "r" : "ry"));
        if (!(radii.minCoeff() > 0)) return {};
        return {drawn_ellipse({length("cx"), length("cy")}, radii)};
    }

    template <class Work>
    auto of_line(Work work) const {
        try {
            return work();
        } catch (const Problem& problem) {
            refuse(problem.wrong(), problem.remedy());
        }
    }

    void add(DrawnLine line, const QString& name) {
        if (line.pieces.empty()) return;
        pieces_ += line.pieces.size();
        if (pieces_ > most_pieces)
            refuse(Core::tr("the drawing has too many lines"), Core::tr("save the outline alone"));
        const Vector2d& end = line.pieces.back().control[3];
        const Vector2d& begin = line.pieces.front().control[0];
        if (!end.allFinite() || !begin.allFinite())
            refuse(Core::tr("a transform is beyond all size"), Core::tr("draw the car at its own size"));
        close_where_met(line, joined);
        if (!line.closed) {
            open_.push_back({std::move(line), name});
            return;
        }
        keep(std::move(line), name);
    }

    /// A closed line.
    void keep(DrawnLine line, const QString& name) {
        DrawnShape shape;
        Eigen::AlignedBox2d box;
        for (const OutlinePiece& piece : line.pieces)
            for (const Vector2d& p : piece.control)
                box.extend(p);
        const double fine = box.sizes().maxCoeff() / 1e5;
        if (!(fine > 0) || !std::isfinite(fine)) return;
        const std::vector<Vector2d> polygon = of_line([&] { return flatten(line, fine); });
        box.setEmpty();
        for (const Vector2d& p : polygon)
            box.extend(p);
        shape.low = box.min();
        shape.high = box.max();
        shape.area = area_of(polygon);
        if (!(shape.area > 0)) return;
        shape.line = std::move(line);
        shape.name = name;
        file_.shapes.push_back(std::move(shape));
    }

    void finish() {
        for (NamedLine& each : join_lines(std::move(open_), joined)) {
            if (each.line.closed)
                keep(std::move(each.line), each.name);
            else
                ++file_.open_lines;
        }
        auto& shapes = file_.shapes;
        std::stable_sort(shapes.begin(), shapes.end(),
                         [](const DrawnShape& a, const DrawnShape& b) { return a.area > b.area; });
        if (shapes.size() > most_shapes) shapes.resize(most_shapes);
        if (!shapes.empty()) return;
        throw Problem(
            Exit::not_ours, "-",
            file_.open_lines > 0   ? Core::tr("no line of the drawing is closed")
            : file_.references > 0 ? Core::tr("the drawing holds no line but copies of others (\"use\")")
                                   : Core::tr("the drawing holds no line"),
            file_.open_lines > 0
                ? Core::tr("join the outline's ends into one closed path in the drawing program")
            : file_.references > 0
                ? Core::tr("turn the copies into paths of their own in the drawing program")
                : Core::tr(
                      "turn texts and pictures into paths in the drawing program, or lay a picture under "
                      "the drawing and trace it"));
    }

    QXmlStreamReader xml_;
    DrawnFile file_;
    std::vector<NamedLine> open_; ///< lines that do not come back to where they begin
    std::size_t pieces_ = 0;
    std::size_t first_shape_inside_ = 0; ///< of the element that has just been opened
};

} // namespace

DrawnFile read_svg(const QByteArray& text) {
    if (text.size() > largest_drawing)
        throw Problem(Exit::not_ours, "-", Core::tr("the file is larger than 32 MiB"),
                      Core::tr("save the outline alone, as plain SVG"));
    return SvgReader(text).read();
}

DrawnFile read_svg_file(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        throw Problem(
            Exit::could_not, "-",
            Core::tr("the file cannot be opened: {why}", {{"why", file.errorString().toStdString()}}),
            Core::tr("check its name and that you may read it"), path.toStdString());
    try {
        return read_svg(file.read(largest_drawing + 1));
    } catch (const Problem& problem) {
        throw problem.in_file(path.toStdString());
    }
}

} // namespace rampwright::ui

#include <rampwright/core/constants.hpp>
#include <rampwright/templates/templates.hpp>
#include <rampwright/units/decimal.hpp>

#include <algorithm>
#include <array>

namespace rampwright {

namespace {

constexpr double margin = 14, gap = 16, bar = 100; ///< mm
constexpr int decimals = 4;

std::string number(double mm) {
    return to_fixed(mm, decimals);
}

std::string escaped(std::string_view text) {
    std::string out;
    for (const char c : text) {
        switch (c) {
        case '&':
            out += "&amp;";
            break;
        case '<':
            out += "&lt;";
            break;
        case '>':
            out += "&gt;";
            break;
        case '"':
            out += "&quot;";
            break;
        default:
            // XML 1.0 has no other control characters than these.
            if (static_cast<unsigned char>(c) >= 0x20 || c == '\t' || c == '\n') out += c;
        }
    }
    return out;
}

/// A view's plane on the page: mm, downward.
struct Place {
    Vec2 origin; ///< where the view's (0, 0) is drawn
    Vec2 operator()(const Vec2& p) const {
        return {origin.x() + p.x() / millimetre, origin.y() - p.y() / millimetre};
    }
    std::string pair(const Vec2& p) const {
        const Vec2 at = (*this)(p);
        return number(at.x()) + " " + number(at.y());
    }
};

std::string element(const LinePath& path, const Place& place) {
    const std::string dashed = path.hidden ? " class=\"hidden\"" : "";
    const std::string title = path.name.empty() ? "/>\n" : "><title>" + escaped(path.name) + "</title>";
    if (path.circle) {
        const Vec2 at = place(path.circle->centre);
        return "    <circle cx=\"" + number(at.x()) + "\" cy=\"" + number(at.y()) + "\" r=\"" +
               number(path.circle->radius / millimetre) + "\"" + dashed + title +
               (path.name.empty() ? "" : "</circle>\n");
    }
    std::string d = "M" + place.pair(path.strokes.front().control[0]);
    for (std::size_t i = 0; i < path.strokes.size(); ++i) {
        const Stroke& stroke = path.strokes[i];
        if (path.closed && i + 1 == path.strokes.size() && stroke.straight) break; // Z draws it
        if (stroke.straight)
            d += " L" + place.pair(stroke.control[3]);
        else
            d += " C" + place.pair(stroke.control[1]) + " " + place.pair(stroke.control[2]) + " " +
                 place.pair(stroke.control[3]);
    }
    if (path.closed) d += " Z";
    return "    <path d=\"" + d + "\"" + dashed + title + (path.name.empty() ? "" : "</path>\n");
}

void add_group(std::string& out, const LineWork& work, const Place& place, LineRole role,
               const std::string& id) {
    out += "  <g id=\"" + id + "\">\n";
    for (const LinePath& path : work.paths)
        if (path.role == role) out += element(path, place);
    out += "  </g>\n";
}

void add_text(std::string& out, const Vec2& at, const std::string& text, const char* anchor) {
    out += "    <text x=\"" + number(at.x()) + "\" y=\"" + number(at.y()) + "\" text-anchor=\"" + anchor +
           "\">" + escaped(text) + "</text>\n";
}

void add_view(std::string& out, const LineWork& work, const Place& place, const std::string& view,
              const std::string& title) {
    add_group(out, work, place, LineRole::outline, view + "-outline");
    add_group(out, work, place, LineRole::cut, view + "-cuts");
    add_group(out, work, place, LineRole::hole, view + "-holes");
    add_group(out, work, place, LineRole::centre, view + "-centre-lines");
    out += "  <g id=\"" + view + "-names\">\n";
    for (const LineLabel& label : work.labels)
        if (label.role != LineRole::ballast) {
            const Vec2 at = place(label.at);
            // An axle's hole is smaller than its name: that stands beside it.
            const bool beside = label.role == LineRole::hole && view == "side";
            add_text(out, at + (beside ? Vec2(3, -3) : Vec2(0, 1)), label.text, beside ? "start" : "middle");
        }
    add_text(out, place({work.low.x(), work.high.y()}) - Vec2(0, 5), title, "start");
    out += "  </g>\n";
}

} // namespace

std::string to_svg(const CarPlan& plan, const CarModel& car) {
    const std::array views{draw_template(plan, car, TemplateView::side),
                           draw_template(plan, car, TemplateView::top)};
    const double left = std::min(views[0].low.x(), views[1].low.x()) / millimetre;
    const double right =
        std::max({views[0].high.x() / millimetre, views[1].high.x() / millimetre, left + bar});
    const double side_height = (views[0].high.y() - views[0].low.y()) / millimetre;
    const double top_height = (views[1].high.y() - views[1].low.y()) / millimetre;
    const double width = right - left + 2 * margin,
                 height = 2 * margin + side_height + gap + top_height + gap;
    const Place side{{margin - left, margin + views[0].high.y() / millimetre}};
    const Place top{{margin - left, margin + side_height + gap + views[1].high.y() / millimetre}};

    std::string out = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                      "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"" +
                      number(width) + "mm\" height=\"" + number(height) + "mm\" viewBox=\"0 0 " +
                      number(width) + " " + number(height) + "\">\n  <title>" + escaped(plan.name) +
                      ", templates at 1:1 in millimetres</title>\n"
                      "  <style>\n"
                      "    path, circle { fill: none; stroke: #000; stroke-width: 0.25; }\n"
                      "    .hidden { stroke-dasharray: 2 1; }\n"
                      "    #side-centre-lines path, #top-centre-lines path "
                      "{ stroke-width: 0.13; stroke-dasharray: 6 1 0.5 1; }\n"
                      "    text { font-family: sans-serif; font-size: 3px; fill: #000; }\n"
                      "  </style>\n";
    add_view(out, views[0], side, "side", plan.name + ", side view from its right");
    add_view(out, views[1], top, "top", plan.name + ", top view");
    const double y = height - margin;
    out += "  <g id=\"check-bar\">\n    <path d=\"M" + number(margin) + " " + number(y) + " L" +
           number(margin + bar) + " " + number(y) + "\"/>\n  </g>\n  <g id=\"check-bar-name\">\n";
    for (const double end : {0., bar})
        out += "    <path d=\"M" + number(margin + end) + " " + number(y - 2) + " L" + number(margin + end) +
               " " + number(y + 2) + "\"/>\n";
    add_text(out, {margin + bar / 2, y + 4}, "100 mm: measure it on the print", "middle");
    out += "  </g>\n</svg>\n";
    return out;
}

} // namespace rampwright

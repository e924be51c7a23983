#include <rampwright/core/constants.hpp>
#include <rampwright/templates/templates.hpp>
#include <rampwright/units/decimal.hpp>

namespace rampwright {

namespace {

constexpr double chord = 5e-6;    ///< m, how far a chord may leave its curve
constexpr double apart = 20;      ///< mm between the two views
constexpr double text_height = 3; ///< mm

/// Group code and value, each on its own line.
class Groups {
public:
    void add(int code, std::string_view value) {
        out_ += std::to_string(code);
        out_ += '\n';
        out_ += value;
        out_ += '\n';
    }
    void add(int code, double mm) { add(code, to_fixed(mm, 6)); }
    void add(int code, int value) { add(code, std::to_string(value)); }
    void point(const Vec2& mm) {
        add(10, mm.x());
        add(20, mm.y());
        add(30, 0.);
    }
    std::string take() { return std::move(out_); }

private:
    std::string out_;
};

/// Release 12 knows plain ASCII only: other characters by their code points, as it writes them.
std::string plain_text(std::string_view utf8) {
    constexpr char digits[] = "0123456789ABCDEF";
    std::string out;
    for (std::size_t i = 0; i < utf8.size();) {
        const auto lead = static_cast<unsigned char>(utf8[i]);
        const std::size_t length = lead < 0x80 ? 1 : lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
        unsigned code = length == 1 ? lead : lead & (0xFFu >> (length + 1));
        for (std::size_t k = 1; k < length && i + k < utf8.size(); ++k)
            code = code << 6 | (static_cast<unsigned char>(utf8[i + k]) & 0x3Fu);
        i += length;
        if (code < 0x20 || code == 0x7F) {
            out += ' ';
        } else if (code < 0x7F) {
            out += static_cast<char>(code);
        } else if (code > 0xFFFF) {
            out += '?';
        } else {
            out += "\\U+";
            for (int shift = 12; shift >= 0; shift -= 4)
                out += digits[code >> shift & 0xFu];
        }
    }
    return out;
}

std::string layer_of(const LinePath& path, const std::string& view) {
    switch (path.role) {
    case LineRole::outline:
        return view + "_OUTLINE";
    case LineRole::hole:
        return view + "_HOLES";
    case LineRole::centre:
        return view + "_CENTRE";
    case LineRole::cut:
    case LineRole::ballast:
        break;
    }
    return view + (path.hidden ? "_HIDDEN" : "_CUTS");
}

void add_layer(Groups& groups, const std::string& name, int colour, const char* line_type) {
    groups.add(0, "LAYER");
    groups.add(2, name);
    groups.add(70, 0);
    groups.add(62, colour);
    groups.add(6, line_type);
}

void add_line_type(Groups& groups, const char* name, const char* looks,
                   std::initializer_list<double> dashes) {
    groups.add(0, "LTYPE");
    groups.add(2, name);
    groups.add(70, 0);
    groups.add(3, looks);
    groups.add(72, 65);
    groups.add(73, static_cast<int>(dashes.size()));
    double length = 0;
    for (const double dash : dashes)
        length += dash < 0 ? -dash : dash;
    groups.add(40, length);
    for (const double dash : dashes)
        groups.add(49, dash);
}

void add_tables(Groups& groups) {
    groups.add(0, "SECTION");
    groups.add(2, "TABLES");
    groups.add(0, "TABLE");
    groups.add(2, "LTYPE");
    groups.add(70, 3);
    add_line_type(groups, "CONTINUOUS", "Solid line", {});
    add_line_type(groups, "HIDDEN", "__ __ __ __", {2, -1});
    add_line_type(groups, "CENTER", "____ _ ____ _", {6, -1, 0.5, -1});
    groups.add(0, "ENDTAB");
    groups.add(0, "TABLE");
    groups.add(2, "LAYER");
    groups.add(70, 13);
    add_layer(groups, "0", 7, "CONTINUOUS");
    for (const std::string view : {"SIDE", "TOP"}) {
        add_layer(groups, view + "_OUTLINE", 7, "CONTINUOUS");
        add_layer(groups, view + "_CUTS", 5, "CONTINUOUS");
        add_layer(groups, view + "_HIDDEN", 8, "HIDDEN");
        add_layer(groups, view + "_HOLES", 1, "CONTINUOUS");
        add_layer(groups, view + "_CENTRE", 3, "CENTER");
        add_layer(groups, view + "_NAMES", 7, "CONTINUOUS");
    }
    groups.add(0, "ENDTAB");
    groups.add(0, "ENDSEC");
}

void add_entity(Groups& groups, const LinePath& path, const std::string& layer, const Vec2& shift) {
    const auto place = [&](const Vec2& p) { return Vec2(p / millimetre + shift); };
    const auto begin = [&](const char* kind) {
        groups.add(0, kind);
        groups.add(8, layer);
        if (path.hidden && path.role == LineRole::hole) groups.add(6, "HIDDEN");
    };
    if (path.circle) {
        begin("CIRCLE");
        groups.point(place(path.circle->centre));
        groups.add(40, path.circle->radius / millimetre);
        return;
    }
    begin("POLYLINE");
    groups.add(66, 1);
    groups.point({0, 0});
    groups.add(70, path.closed ? 1 : 0);
    for (const Vec2& point : flatten(path, chord)) {
        groups.add(0, "VERTEX");
        groups.add(8, layer);
        groups.point(place(point));
    }
    groups.add(0, "SEQEND");
    groups.add(8, layer);
}

void add_text(Groups& groups, const std::string& layer, const Vec2& at, const std::string& text) {
    groups.add(0, "TEXT");
    groups.add(8, layer);
    groups.point(at);
    groups.add(40, text_height);
    groups.add(1, plain_text(text));
}

void add_view(Groups& groups, const LineWork& work, const std::string& view, const Vec2& shift,
              const std::string& title) {
    for (const LinePath& path : work.paths)
        if (path.role != LineRole::ballast) add_entity(groups, path, layer_of(path, view), shift);
    for (const LineLabel& label : work.labels)
        if (label.role != LineRole::ballast)
            add_text(groups, view + "_NAMES", label.at / millimetre + shift, label.text);
    add_text(groups, view + "_NAMES",
             Vec2(work.low.x(), work.high.y()) / millimetre + shift + Vec2(0, text_height), title);
}

} // namespace

std::string to_dxf(const CarPlan& plan, const CarModel& car) {
    const LineWork side = draw_template(plan, car, TemplateView::side);
    const LineWork top = draw_template(plan, car, TemplateView::top);
    const Vec2 down(0, (side.low.y() - top.high.y()) / millimetre - apart);
    const Vec2 low = Vec2(std::min(side.low.x(), top.low.x()), 0) / millimetre +
                     Vec2(0, top.low.y() / millimetre + down.y());
    const Vec2 high = Vec2(std::max(side.high.x(), top.high.x()), side.high.y()) / millimetre;
    Groups groups;
    groups.add(999, "templates at 1:1, one drawing unit is one millimetre");
    groups.add(0, "SECTION");
    groups.add(2, "HEADER");
    groups.add(9, "$ACADVER");
    groups.add(1, "AC1009");
    groups.add(9, "$EXTMIN");
    groups.point(low);
    groups.add(9, "$EXTMAX");
    groups.point(high);
    groups.add(9, "$LTSCALE");
    groups.add(40, 1.);
    groups.add(0, "ENDSEC");
    add_tables(groups);
    groups.add(0, "SECTION");
    groups.add(2, "ENTITIES");
    add_view(groups, side, "SIDE", {0, 0}, plan.name + ", side view from its right");
    add_view(groups, top, "TOP", down, plan.name + ", top view");
    groups.add(0, "ENDSEC");
    groups.add(0, "EOF");
    return groups.take();
}

} // namespace rampwright

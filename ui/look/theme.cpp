#include "look/theme.hpp"

#include "look/bench_style.hpp"

#include <QApplication>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

Theme current;

double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& c) {
    return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

QPalette make_palette(const Theme& t) {
    const bool dark = t.appearance == Appearance::dark;
    const QColor button = dark ? QColor(0x33373c) : QColor(0xf3f0ea);
    const QColor disabled = dark ? QColor(0x83888e) : QColor(0x77736b);
    QPalette p;
    p.setColor(QPalette::Window, t.bench);
    p.setColor(QPalette::WindowText, t.ink);
    p.setColor(QPalette::Base, t.paper);
    p.setColor(QPalette::AlternateBase, dark ? QColor(0x2b2f33) : QColor(0xf4f1ea));
    p.setColor(QPalette::Text, t.ink);
    p.setColor(QPalette::PlaceholderText, t.faint_ink);
    p.setColor(QPalette::Button, button);
    p.setColor(QPalette::ButtonText, t.ink);
    p.setColor(QPalette::BrightText, t.breach);
    p.setColor(QPalette::ToolTipBase, t.paper);
    p.setColor(QPalette::ToolTipText, t.ink);
    p.setColor(QPalette::Highlight, t.accent);
    p.setColor(QPalette::HighlightedText, dark ? QColor(0x111315) : QColor(Qt::white));
    p.setColor(QPalette::Link, t.accent);
    p.setColor(QPalette::LinkVisited, t.accent);
    p.setColor(QPalette::Light, button.lighter(dark ? 130 : 105));
    p.setColor(QPalette::Midlight, button.lighter(dark ? 115 : 102));
    p.setColor(QPalette::Mid, button.darker(dark ? 130 : 115));
    p.setColor(QPalette::Dark, button.darker(dark ? 170 : 150));
    p.setColor(QPalette::Shadow, dark ? QColor(0x0b0c0d) : QColor(0x8a857b));
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        p.setColor(QPalette::Disabled, role, disabled);
    return p;
}

} // namespace

Theme make_theme(Appearance appearance) {
    Theme t;
    t.appearance = appearance;
    if (appearance == Appearance::light) {
        t.bench = 0xe4e0d8;
        t.paper = 0xfdfcf8;
        t.paper_edge = 0xc2bcb0;
        t.grid = 0xeeebe2;
        t.ink = 0x1d2125;
        t.faint_ink = 0x5a5f66;
        t.accent = 0x0072b2;
        t.wood = 0xecd6b0;
        t.wood_ink = 0x6b4f2a;
        t.grain = 0xe0c698;
        t.cavity = 0xf8efdc;
        t.metal = 0x868c93;
        t.metal_ink = 0x2f343a;
        t.wheel = 0x4a4f56;
        t.wheel_ink = 0x1d2125;
        t.axle = 0xb9bec4;
        t.good = 0x00805c;
        t.caution = 0xb26b00;
        t.breach = 0xc24a00;
        t.series = {0x0072b2, 0xc24a00, 0x00805c, 0xa86400, 0x9c4a7c, 0x1d2125};
    } else {
        t.bench = 0x17191b;
        t.paper = 0x23272b;
        t.paper_edge = 0x3c4248;
        t.grid = 0x2b3035;
        t.ink = 0xe9e7e2;
        t.faint_ink = 0xa9adb2;
        t.accent = 0x56b4e9;
        t.wood = 0x7b6242;
        t.wood_ink = 0xe0c79c;
        t.grain = 0x6d5538;
        t.cavity = 0x3d3529;
        t.metal = 0x9aa1a9;
        t.metal_ink = 0xe9ecef;
        t.wheel = 0x14171a;
        t.wheel_ink = 0xb4b9bf;
        t.axle = 0x8a9097;
        t.good = 0x2fbf95;
        t.caution = 0xe69f00;
        t.breach = 0xff8a4c;
        t.series = {0x56b4e9, 0xff8a4c, 0x2fbf95, 0xe69f00, 0xdf9cc2, 0xe9e7e2};
    }
    t.palette = make_palette(t);
    return t;
}

const Theme& theme() {
    return current;
}

void apply_theme(Appearance appearance) {
    current = make_theme(appearance);
    if (!qApp) return;
    QApplication::setStyle(new BenchStyle);
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPointSizeF(std::max(9.0, QApplication::font().pointSizeF()));
    QApplication::setFont(font);
    QApplication::setPalette(current.palette);
    QToolTip::setPalette(current.palette);
}

double contrast(const QColor& a, const QColor& b) {
    const double la = luminance(a), lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

QFont text_font(double scale, bool bold) {
    QFont font = QApplication::font();
    font.setPointSizeF(font.pointSizeF() * scale);
    font.setBold(bold);
    return font;
}

} // namespace rampwright::ui

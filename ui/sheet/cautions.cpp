#include "sheet/cautions.hpp"

#include "sheet/words.hpp"
#include "text/said.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/materials/materials.hpp>

#include <algorithm>

namespace rampwright::ui::paper {
namespace {

constexpr TextStyle caution_style{8, false};
constexpr double sign_width = 6.5;

QString caution_words(const std::string& code) {
    const Caution* caution = find_caution(code);
    if (!caution) return {};
    QString text = said(caution->text);
    // That sentence stands at the foot of every page.
    const QString decide = from_utf8(Core::tr(" Local rules and the adult in charge decide."));
    if (text.endsWith(decide)) text.chop(decide.size());
    return Words::tr("Care: %1").arg(text);
}

std::vector<QStringList> caution_lines(const Flow& flow, const std::vector<std::string>& codes,
                                       double indent) {
    std::vector<QStringList> all;
    std::vector<std::string> seen;
    for (const std::string& code : codes) {
        if (std::find(seen.begin(), seen.end(), code) != seen.end()) continue;
        seen.push_back(code);
        if (const QString text = caution_words(code); !text.isEmpty())
            all.push_back(wrapped(text, caution_style, flow.body().width() - indent - sign_width - 1));
    }
    return all;
}

double height_of(const QStringList& lines) {
    return std::max(5.6, double(lines.size()) * leading_of(caution_style) + 1.2);
}

/// A triangle with an exclamation mark (ISO 7010, W001), drawn so that it needs no colour.
void put_sign(Flow& flow, QPointF corner) {
    constexpr double side = 5.2;
    const double height = side * 0.866;
    QPainterPath triangle(corner + QPointF(side / 2, 0));
    triangle.lineTo(corner + QPointF(side, height));
    triangle.lineTo(corner + QPointF(0, height));
    triangle.closeSubpath();
    flow.stroke(triangle, 0.45);
    const QPointF top = corner + QPointF(side / 2, 1.35);
    flow.line(top, top + QPointF(0, 1.6), 0.6);
    QPainterPath dot;
    dot.addEllipse(top + QPointF(0, 2.35), 0.35, 0.35);
    flow.fill(dot, 0, 0);
}

} // namespace

double cautions_height(const Flow& flow, const std::vector<std::string>& codes, double indent) {
    double height = 0;
    for (const QStringList& lines : caution_lines(flow, codes, indent))
        height += height_of(lines);
    return height;
}

void put_cautions(Flow& flow, const std::vector<std::string>& codes, double indent) {
    for (const QStringList& lines : caution_lines(flow, codes, indent)) {
        flow.need(height_of(lines));
        const double left = flow.body().left() + indent;
        put_sign(flow, {left, flow.y() + 0.3});
        double y = flow.y();
        for (const QString& line : lines) {
            flow.put({left + sign_width, y + ascent_of(caution_style)}, line, caution_style);
            y += leading_of(caution_style);
        }
        flow.skip(height_of(lines));
    }
}

} // namespace rampwright::ui::paper

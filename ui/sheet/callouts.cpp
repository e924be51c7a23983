#include "sheet/callouts.hpp"

#include <algorithm>

namespace rampwright::ui::paper {
namespace {

constexpr double kink = 5;           ///< mm in which lines move from their place to their label's
constexpr double gap = 1.6;          ///< mm between rows of labels
constexpr double word_gap = 4;       ///< mm between labels side by side
constexpr double ring_radius = 2.35; ///< mm

} // namespace

Callouts::Callouts(Edge edge, double low, double high, TextStyle style)
    : edge_(edge), low_(low), high_(high), style_(style) {}

void Callouts::add(const QString& text, QPointF anchor, bool ringed) {
    texts_.push_back({text, anchor, ringed});
}

double Callouts::across() const {
    double most = 0;
    for (const Said& said : texts_) {
        const double text =
            edge_ == Edge::right ? width_of(said.text, style_) : ascent_of(style_) + descent_of(style_);
        most = std::max(most, said.ringed ? 2 * ring_radius : text);
    }
    return most + gap;
}

double Callouts::settle() {
    labels_.clear();
    for (const Said& said : texts_) {
        const bool right = edge_ == Edge::right;
        const double text = right ? ascent_of(style_) + descent_of(style_) : width_of(said.text, style_);
        labels_.push_back({right ? said.anchor.y() : said.anchor.x(),
                           said.ringed ? std::max(2 * ring_radius, text) : text, 0, 0});
    }
    if (labels_.empty()) return 0;
    const bool ringed =
        std::any_of(texts_.begin(), texts_.end(), [](const Said& said) { return said.ringed; });
    rows_ = spread(labels_, low_, high_, edge_ == Edge::right ? 0.3 : ringed ? gap : word_gap);
    return kink + rows_ * across();
}

void Callouts::put(Flow& flow, double edge) const {
    if (labels_.empty()) return;
    const double sign = edge_ == Edge::above ? -1 : 1;
    const auto start_of = [&](const Label& label) { return edge + sign * (kink + label.row * across()); };
    // All lines first: a label farther out may wipe out a line that passes behind a nearer one.
    for (std::size_t i = 0; i < texts_.size(); ++i) {
        const Label& label = labels_[i];
        const double start = start_of(label);
        QPainterPath path(texts_[i].anchor);
        if (edge_ == Edge::right) {
            path.lineTo(edge + 0.5, label.at);
            path.lineTo(start - 0.6, label.placed);
        } else {
            path.lineTo(label.at, edge + sign * 0.5);
            path.lineTo(label.placed, edge + sign * (kink - 0.6));
            path.lineTo(label.placed, start - sign * 0.4);
        }
        flow.stroke(path, 0.13);
        if (texts_[i].ringed) {
            QPainterPath dot;
            dot.addEllipse(texts_[i].anchor, 0.45, 0.45);
            flow.fill(dot, 0, 0);
        }
    }
    for (std::size_t i = 0; i < texts_.size(); ++i) {
        const Label& label = labels_[i];
        const double start = start_of(label), ascent = ascent_of(style_),
                     height = ascent + descent_of(style_);
        if (edge_ == Edge::right) {
            flow.put({start, label.placed - height / 2 + ascent}, texts_[i].text, style_, Align::left, true);
            continue;
        }
        const double middle = start + sign * (across() - gap) / 2;
        if (texts_[i].ringed) {
            QPainterPath ring;
            const double wide = std::max(ring_radius, width_of(texts_[i].text, style_) / 2 + 0.4);
            ring.addEllipse(QPointF(label.placed, middle), wide, ring_radius);
            flow.fill(ring, 1, 0.25);
        }
        flow.put({label.placed, middle - height / 2 + ascent}, texts_[i].text, style_, Align::middle,
                 !texts_[i].ringed);
    }
}

} // namespace rampwright::ui::paper

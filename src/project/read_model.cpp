#include "project/read_parts.hpp"

#include <array>
#include <cmath>
#include <numbers>

namespace rampwright {

namespace {

/// A name of the model, its usual value with one sigma, and the largest value that makes sense.
///
/// `creep_per_rad` is uncertain by a factor of 3. Positive inputs are drawn log-normally, and a sigma is
/// turned into that of the logarithm by sigma / value; so a factor f stands here as ln(f) x value.
struct ModelInput {
    ModelName name;
    std::string_view key;
    double value, sigma;
    Tag tag;
    double largest;
    std::string_view unit = "";
};

const std::array<ModelInput, model_name_count> inputs{{
    {ModelName::journal, "journal", 0.10, 0.03, Tag::fit, 2},
    {ModelName::hub_on_head, "hub_on_head", 0.15, 0.05, Tag::memory, 2},
    {ModelName::hub_on_wood, "hub_on_wood", 0.35, 0.10, Tag::memory, 2},
    {ModelName::rolling, "rolling", 0.0015, 0.0005, Tag::fit, 0.1},
    {ModelName::edge_factor, "edge_factor", 1.0, 0.3, Tag::fit, 5},
    {ModelName::windage, "windage", 1.0, 0.5, Tag::fit, 10},
    {ModelName::tread_grip, "tread_grip", 0.3, 0.1, Tag::fit, 3},
    {ModelName::creep_per_rad, "creep_per_rad", 10, 10 * 1.0986122886681098, Tag::fit, 1000}, // ln 3
    {ModelName::rail, "rail", 0.2, 0.07, Tag::fit, 2},
    {ModelName::rail_share, "rail_share", 0.25, 0.1, Tag::fit, 1},
    {ModelName::touch_share, "touch_share", 0.6, 0.2, Tag::fit, 1},
    {ModelName::restitution, "restitution", 0.5, 0.15, Tag::fit, 1},
    {ModelName::align_deg, "align_deg", 0.4, 0.4 / 3, Tag::fit, 10, "°"},
    {ModelName::need_deg, "need_deg", 0.4, 0.4 / 3, Tag::fit, 10, "°"},
    {ModelName::kick_n_mm, "kick_n_mm", 1.4, 1.4 / 3, Tag::fit, 100, "N mm"},
    {ModelName::hold_width, "hold_width", 0.35, 0.1, Tag::fit, 5},
}};

/// Spread of the toe that the holes leave, degrees; need and kick of a track, degrees and N mm. One sigma
/// is a third of the value.
double align_of(Holes holes) {
    return holes == Holes::jig ? 0.2 : holes == Holes::press ? 0.4 : 0.8;
}
double need_of(Quality q) {
    return q == Quality::smooth ? 0.2 : q == Quality::fair ? 0.4 : 0.7;
}
double kick_of(Quality q) {
    return q == Quality::smooth ? 0.9 : q == Quality::fair ? 1.4 : 2.0;
}

ModelInput by_third(ModelInput input, double value) {
    input.value = value;
    input.sigma = value / 3;
    return input;
}

/// Reads what the file states of an input into `entry`: a value without a sigma keeps the usual
/// uncertainty relative to itself.
void read_stated(const Node& node, const ModelInput& usual, Uncertain& entry) {
    // The numbers stay in the unit of the name: no key ending applies to them.
    const Node value = node["value"];
    const Node sigma = node["sigma"];
    if (value.present()) {
        entry.value = value.number(from_to(0, usual.largest));
        if (!sigma.present()) {
            entry.sigma = usual.sigma / usual.value * entry.value;
            sigma.assume(Default{entry.sigma, 0, usual.tag}, usual.unit);
        }
    }
    if (sigma.present()) entry.sigma = sigma.number(from_to(0, 10 * usual.largest));
}

} // namespace

std::string_view to_string(ModelName name) {
    return inputs[static_cast<std::size_t>(name)].key;
}

Model read_model(const Node& model, Quality quality) {
    Model m;
    for (std::size_t i = 0; i < model_name_count; ++i) {
        ModelInput usual = inputs[i];
        if (usual.name == ModelName::need_deg) usual = by_third(usual, need_of(quality));
        if (usual.name == ModelName::kick_n_mm) usual = by_third(usual, kick_of(quality));
        const Node node = model[usual.key];
        m.values[i] = {usual.value, usual.sigma};
        if (node.object().present()) {
            read_stated(node, usual, m.values[i]);
            m.given[i] = true;
        } else if (usual.name != ModelName::align_deg) {
            node.assume(Default{usual.value, usual.sigma, usual.tag}, usual.unit);
        }
    }
    return m;
}

Model read_car_model(const Node& model, const Model& project_model, Holes holes) {
    Model m = project_model;
    for (std::size_t i = 0; i < model_name_count; ++i) {
        ModelInput usual = inputs[i];
        const Node node = model[usual.key];
        if (usual.name == ModelName::align_deg) {
            usual = by_third(usual, align_of(holes));
            if (!m.given[i]) {
                m.values[i] = {usual.value, usual.sigma};
                if (!node.present()) node.assume(Default{usual.value, usual.sigma, usual.tag}, usual.unit);
            }
        }
        if (node.object().present()) {
            read_stated(node, usual, m.values[i]);
            m.given[i] = true;
        }
    }
    return m;
}

} // namespace rampwright

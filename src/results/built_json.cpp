#include "results/finding_json.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/results/built.hpp>

namespace rampwright {

namespace {

std::string_view word_for(Trim::Kind kind) {
    switch (kind) {
    case Trim::Kind::take_off:
        return "take-off";
    case Trim::Kind::add:
        return "add";
    case Trim::Kind::move:
        return "move";
    }
    return {};
}

Json to_json(const Trim& trim) {
    Json json{{"do", word_for(trim.kind)}, {"mass_g", trim.mass / gram}};
    json["ahead_of_rear_axle_mm"] = trim.placed ? Json(trim.at / millimetre) : Json(nullptr);
    if (trim.kind == Trim::Kind::move) json["forward_mm"] = trim.by / millimetre;
    json["piece"] = trim.piece.empty() ? Json(nullptr) : Json(trim.piece);
    json["mass_after_g"] = trim.mass_after / gram;
    if (trim.placed) {
        json["balance_after_mm"] = trim.balance_after / millimetre;
        json["front_load_after_g"] = trim.front_load_after / gram;
    }
    json["text"] = trim.text;
    return json;
}

} // namespace

Json to_json(const Built& built) {
    Json json{{"lines", Json::array()}, {"reasons", Json::array()}};
    for (const BuiltLine& line : built.lines) {
        const double unit = line.quantity == Quantity::mass ? gram : millimetre;
        json["lines"].push_back({{"code", line.code},
                                 {"name", line.name},
                                 {"unit", line.quantity == Quantity::mass ? "g" : "mm"},
                                 {"planned", line.planned / unit},
                                 {"built", line.built / unit},
                                 {"sigma", line.sigma / unit},
                                 {"difference", line.difference() / unit}});
    }
    for (const Finding& reason : built.reasons)
        json["reasons"].push_back(to_json(reason));
    json["closure_g"] = built.closure ? Json(*built.closure / gram) : Json(nullptr);
    json["trims"] = Json::array();
    for (const Trim& trim : built.trims)
        json["trims"].push_back(to_json(trim));
    json["words"] = built.words;
    return json;
}

} // namespace rampwright

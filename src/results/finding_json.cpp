#include "results/finding_json.hpp"

namespace rampwright {

Json to_json(const Finding& finding) {
    Json values = Json::object();
    for (const auto& [key, value] : finding.values)
        values[key] = value;
    Json at = nullptr;
    if (finding.at) at = {finding.at->x() * 1e3, finding.at->y() * 1e3, finding.at->z() * 1e3};
    return {{"code", finding.code},   {"severity", to_string(finding.severity)},
            {"where", finding.where}, {"at_mm", at},
            {"values", values},       {"text", finding.text}};
}

} // namespace rampwright

#pragma once

#include <rampwright/project/document.hpp>

#include <string>

/// The demo project, which most whole-program tests start from.
inline std::string demo_path() {
    return std::string(RAMPWRIGHT_SOURCE_DIR) + "/data/harbour-hall.ramp.json";
}
inline rampwright::Document demo_document() {
    return rampwright::load_document(demo_path());
}
inline rampwright::Project demo_project() {
    return rampwright::read_project(demo_document());
}

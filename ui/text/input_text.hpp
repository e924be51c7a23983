#pragma once

#include <rampwright/project/project.hpp>

#include <QString>

namespace rampwright::ui {

/// An uncertain input in a builder's words, by its key among the shares of a prediction: "journal" is the
/// axles' friction, "mass/ballast/0" the mass of the first piece by its own name. A key that is not known
/// reads as itself.
QString input_text(std::string_view key, const CarPlan& car);

} // namespace rampwright::ui

#pragma once

#include "panels/step_ruler.hpp"

#include <QString>

#include <optional>
#include <string_view>
#include <vector>

class QWidget;

namespace rampwright::ui {

class CarCanvas;
class Session;

/// Something a step shows besides the drawing, chosen above the sheet.
struct StepView {
    QString name;
    QWidget* widget;
};

/// What the window shows for one step of the job.
struct StepPage {
    Step step;
    QString name, why;
    QWidget* slip;                 ///< the step's fields, in the right column
    QWidget* sheet = nullptr;      ///< takes the place of the car's drawing; none: the drawing
    bool drawer = true;            ///< whether energy and findings stay below
    std::vector<StepView> views{}; ///< further views beside the sheet
};

/// The steps in the order of the job. The widgets have no parent yet.
std::vector<StepPage> make_step_pages(Session& session, CarCanvas& drawing);

/// The step a command line calls "agree", "shape" and so on.
std::optional<Step> step_named(std::string_view name);

} // namespace rampwright::ui

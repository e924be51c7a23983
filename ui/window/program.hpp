#pragma once

#include "look/theme.hpp"
#include "panels/step_ruler.hpp"

#include <QSize>
#include <QString>

#include <optional>
#include <span>
#include <string>

namespace rampwright::ui {

/// How the window was called.
struct WindowCall {
    std::optional<std::string> project; ///< none: the demo, as a copy that has no file yet
    QString grab;                       ///< a picture to make of the window, which then closes
    int wait_ms = 300;                  ///< before that picture is made
    QSize size;
    std::optional<Appearance> appearance;
    std::optional<Step> step; ///< where it opens
    QString language;         ///< "de"; empty: as chosen, a picture in English
};

/// @throws Problem (Exit::wrong_call) for what is no option of the window.
WindowCall read_window_call(std::span<const std::string> arguments);

/// Opens the workbench and runs it until it is closed. @return the program's exit status.
int run_window(const WindowCall& call, int& argc, char** argv);

} // namespace rampwright::ui

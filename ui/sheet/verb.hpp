#pragma once

#include <rampwright/command_line/command_line.hpp>

namespace rampwright::ui {

/// `sheet`: the build sheet as a file, made without a display and without widgets.
Verb sheet_verb();

} // namespace rampwright::ui

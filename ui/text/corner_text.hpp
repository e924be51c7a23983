#pragma once

#include <rampwright/project/project.hpp>

#include <QString>

namespace rampwright::ui {

/// "rear left", in the person's language.
QString corner_text(Corner corner);

} // namespace rampwright::ui

#pragma once

#include <rampwright/core/say.hpp>

#include <QString>

namespace rampwright::ui {

/// A word of a built-in table in the person's language.
inline QString said(std::string_view english) {
    return QString::fromStdString(Core::tr(english));
}

} // namespace rampwright::ui

#pragma once

#include <QString>

#include <functional>

class QMenu;

namespace rampwright::ui {

/// What the person chose: "en", "de"; empty follows the system.
QString chosen_language();

/// Sets the window's language, and with it the core's: the chosen one, or the first of the system's that is
/// there, or English. Call once, after the application is made and before anything is computed.
void load_language(const QString& chosen);

/// The menu in which a language is chosen; it is kept and holds from the next start.
/// @param say takes the sentence that tells so.
void add_language_menu(QMenu& view, bool keep_settings, std::function<void(const QString&)> say);

} // namespace rampwright::ui

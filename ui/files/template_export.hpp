#pragma once

class QWidget;

#include <QString>

namespace rampwright::ui {

class Session;

/// Asks for a file name and writes the templates, the solid or the weight schedule of the car on the sheet;
/// the name's ending tells which. @return what was written, for the status line; empty where nothing was.
QString export_templates(QWidget& window, const Session& session);

} // namespace rampwright::ui

#pragma once

#include "session/session.hpp"

#include <QString>

class QWidget;

/// What a person brings to be traced: pictures under the drawing, outlines from drawing files. All of it asks
/// the session, one undo step each, and returns what to say, or nothing.
namespace rampwright::ui {

/// Chooses a file and lays it under the side view or the top view, as wide as the block is long.
QString lay_picture(QWidget& window, Session& session, bool plan);
/// The same of a file that is known.
QString lay_picture_file(Session& session, const QString& path, bool plan);
/// Chooses the file of a picture anew; scale and place stay.
QString find_picture(QWidget& window, Session& session, bool plan);

/// Chooses an SVG file, shows what it holds, and takes one closed line of it in as the outline.
QString read_outline(QWidget& window, Session& session, bool plan);
/// The same of a file that is known.
QString read_outline_file(QWidget& window, Session& session, const QString& path, bool plan);

} // namespace rampwright::ui

#pragma once

#include <functional>

class QWidget;

namespace rampwright::ui {

class Session;

/// Calls `refresh` whenever the project or the car on the sheet is another, while the view can be seen, and
/// when it comes into sight. What nobody sees is not worked out: a drag pays for the open views alone.
void follow_while_seen(QWidget& view, Session& session, std::function<void()> refresh);

} // namespace rampwright::ui

#pragma once

#include <QString>

namespace rampwright::ui {

/// When the program is ended by a fault of its own (a bad memory access, an assertion, an exception nobody
/// took), a text is left in `folder`: version, time, what happened and the calls that led there. It stays on
/// this computer; nothing is sent. Call once, early.
void leave_fault_reports_in(const QString& folder);

/// The text an earlier run left, or empty; it is gone afterwards. @param folder as above.
QString take_fault_report(const QString& folder);

} // namespace rampwright::ui

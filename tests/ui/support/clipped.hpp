#pragma once

#include <string>
#include <vector>

class QWidget;

namespace rampwright::ui::testing {

std::string describe(const QWidget& widget);

/// Visible text of labels and buttons that its place cuts off.
std::vector<std::string> clipped(QWidget& window);

} // namespace rampwright::ui::testing

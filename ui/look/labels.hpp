#pragma once

#include <QString>

class QLabel;
class QWidget;

namespace rampwright::ui {

/// The heading of a group on a slip or a panel. @param above free room over it, px.
QLabel* heading_label(const QString& text, QWidget* parent, int above = 0);

} // namespace rampwright::ui

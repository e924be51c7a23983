#include "look/labels.hpp"

#include "look/theme.hpp"

#include <QLabel>

namespace rampwright::ui {

QLabel* heading_label(const QString& text, QWidget* parent, int above) {
    auto* label = new QLabel(text, parent);
    label->setFont(text_font(1.0, true));
    label->setContentsMargins(0, above, 0, 0);
    return label;
}

} // namespace rampwright::ui

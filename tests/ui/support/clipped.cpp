#include "support/clipped.hpp"

#include <QAbstractButton>
#include <QLabel>

namespace rampwright::ui::testing {

std::string describe(const QWidget& widget) {
    return std::string(widget.metaObject()->className()) + " \"" + widget.objectName().toStdString() + "\"";
}

std::vector<std::string> clipped(QWidget& window) {
    std::vector<std::string> found;
    for (auto* label : window.findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty()) continue;
        const bool fits = label->wordWrap() ? label->heightForWidth(label->width()) <= label->height() + 1
                                            : label->sizeHint().width() <= label->width() &&
                                                  label->sizeHint().height() <= label->height() + 1;
        if (!fits) found.push_back(describe(*label) + ": " + label->text().toStdString());
    }
    for (auto* button : window.findChildren<QAbstractButton*>())
        if (button->isVisible() && !button->text().isEmpty() && button->sizeHint().width() > button->width())
            found.push_back(describe(*button) + ": " + button->text().toStdString());
    return found;
}

} // namespace rampwright::ui::testing

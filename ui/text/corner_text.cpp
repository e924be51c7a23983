#include "text/corner_text.hpp"

namespace rampwright::ui {

QString corner_text(Corner corner) {
    return QString::fromStdString(in_words(corner));
}

} // namespace rampwright::ui

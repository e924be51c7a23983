#include "sheet/paper.hpp"

namespace rampwright::ui::paper {

std::string_view to_string(Paper paper) {
    return paper == Paper::letter ? "letter" : "a4";
}

std::optional<Paper> find_paper(std::string_view word) {
    for (const Paper paper : {Paper::letter, Paper::a4})
        if (word == to_string(paper)) return paper;
    return std::nullopt;
}

QSizeF size_of(Paper paper) {
    return paper == Paper::letter ? QSizeF(215.9, 279.4) : QSizeF(210, 297);
}

QRectF printable(Paper paper) {
    const QSizeF size = size_of(paper);
    return {12, 10, size.width() - 24, size.height() - 20};
}

} // namespace rampwright::ui::paper

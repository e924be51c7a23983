#pragma once

#include <QProxyStyle>

namespace rampwright::ui {

/// The toolkit's own drawing, with a frame one can see round what is ticked: its own is darker than the
/// window, which on a dark bench is nothing (WCAG 2.1, 1.4.11 asks for 3 : 1).
class BenchStyle : public QProxyStyle {
    Q_OBJECT
public:
    BenchStyle();
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
};

} // namespace rampwright::ui

#pragma once

#include "session/session.hpp"

#include <QWidget>

namespace rampwright::ui {

class CarCanvas;

/// The slip of the step "Shape": starting shapes, the tools that cut, what is in hand, the wood's own
/// numbers.
class ShapeSlip : public QWidget {
    Q_OBJECT

public:
    ShapeSlip(Session& session, CarCanvas& canvas, QWidget* parent = nullptr);
};

} // namespace rampwright::ui

#pragma once

#include <rampwright/rules/inspection.hpp>

#include <QPointF>
#include <QString>
#include <QWidget>

#include <optional>

class QPainter;

namespace rampwright::ui {

inline constexpr double verdict_mark_radius = 8;

/// How a rule stands, told apart by shape: a disc with a tick (passes), a triangle (narrowly), a square on
/// its corner with a cross (broken), a ring with a question mark (look at it yourself).
void paint_verdict_mark(QPainter& painter, QPointF centre, Verdict verdict);

/// The same words as the core's, translated.
QString verdict_text(Verdict verdict);

/// Said wherever verdicts are shown: the core's `inspector_decides`, translated.
QString inspector_decides_text();

/// A verdict's mark in a layout; empty where no rule is set. The words stand beside it.
class VerdictMark : public QWidget {
public:
    explicit VerdictMark(QWidget* parent = nullptr);
    void show(std::optional<Verdict> verdict);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<Verdict> verdict_;
};

} // namespace rampwright::ui

#include "panels/shape_picker.hpp"

#include "drawing/outline.hpp"
#include "drawing/pens.hpp"
#include "drawing/target.hpp"
#include "look/icon.hpp"
#include "look/theme.hpp"
#include "text/figure_text.hpp"
#include "text/said.hpp"

#include <rampwright/materials/starting_shapes.hpp>

#include <QCoreApplication>
#include <QEvent>
#include <QGridLayout>
#include <QPainter>
#include <QToolButton>

namespace rampwright::ui {
namespace {

constexpr QSize icon_size(76, 42);
constexpr int shapes_in_a_row = 3;

/// A usual block's proportions: 178 by 44 by 32.
constexpr double block_length = 70, block_width = block_length * 44 / 178,
                 block_height = block_length * 32 / 178;

/// Side view above, seen from above below, as the sheet has them; with wheels, so that it looks like a car.
QIcon shape_icon(const StartingShape& shape, double ratio) {
    return drawn_icon(icon_size, ratio, [&](QPainter& painter) {
        const Theme& t = theme();
        const double left = (icon_size.width() - block_length) / 2, ground = 19;
        const auto scaled = [](const std::vector<PlanPoint>& points, double height) {
            std::vector<PlanPoint> far = points;
            for (PlanPoint& point : far)
                point.at = {point.at.x() * block_length, point.at.y() * height};
            return outline_path(far, block_length, 0, height);
        };
        const auto draw = [&](const QPainterPath& outline, double base) {
            const QPainterPath on_icon = QTransform(1, 0, 0, -1, left, base).map(outline);
            painter.fillPath(on_icon, t.wood);
            painter.setPen(outline_pen(t.wood_ink, 1.1));
            painter.drawPath(on_icon);
        };
        draw(scaled(shape.profile, block_height), ground - 3);
        painter.setBrush(t.wheel);
        painter.setPen(thin_pen(t.wheel_ink));
        for (const double x : {0.13, 0.8})
            painter.drawEllipse(QPointF(left + x * block_length, ground - 4), 4, 4);
        painter.setBrush(Qt::NoBrush);
        draw(scaled(shape.plan, block_width), icon_size.height() - 2 - block_width / 2);
    });
}

} // namespace

ShapePicker::ShapePicker(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(4);
    const auto& shapes = starting_shapes();
    for (std::size_t i = 0; i < shapes.size(); ++i) {
        auto* button = new QToolButton(this);
        const QString name = said(shapes[i].name);
        button->setObjectName(QStringLiteral("shape.") + QString::fromStdString(shapes[i].id));
        button->setText(name);
        button->setAccessibleName(tr("Start from the shape %1").arg(name));
        button->setToolTip(
            tr("Gives the wood this outline, as large as your block. Pockets and weights stay."));
        button->setIconSize(icon_size);
        button->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
        button->setAutoRaise(true);
        button->setFont(text_font(0.88));
        button->setFocusPolicy(Qt::StrongFocus);
        button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        connect(button, &QToolButton::clicked, this, [this, i] {
            try {
                session_.apply(start_from_shape(session_.document(), session_.car(), starting_shapes()[i]));
            } catch (const Problem& problem) {
                Q_EMIT refused(plain_text(problem));
            }
        });
        grid->addWidget(button, static_cast<int>(i) / shapes_in_a_row, static_cast<int>(i) % shapes_in_a_row);
        buttons_.push_back(button);
    }
    draw_icons();
    connect(&session_, &Session::changed, this, &ShapePicker::refresh);
    connect(&session_, &Session::car_chosen, this, &ShapePicker::refresh);
    refresh();
}

void ShapePicker::draw_icons() {
    for (std::size_t i = 0; i < buttons_.size(); ++i)
        buttons_[i]->setIcon(shape_icon(starting_shapes()[i], devicePixelRatioF()));
}

void ShapePicker::refresh() {
    setEnabled(why_stuck(session_.plan(), {TargetKind::profile_point, 0, 0}).isEmpty());
}

void ShapePicker::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange) draw_icons();
    QWidget::changeEvent(event);
}

} // namespace rampwright::ui

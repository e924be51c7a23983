#include "aim/aim_pictures.hpp"

#include "look/theme.hpp"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace rampwright::ui {
namespace {

constexpr double sideways_scale = 4, lean_scale = 3;

void arrow_head(QPainter& painter, QPointF tip, double angle, double size) {
    QPolygonF head;
    for (const double aside : {0.0, 2.6, -2.6})
        head << tip + size * (aside == 0.0 ? QPointF(0, 0)
                                           : QPointF(std::cos(angle + aside), std::sin(angle + aside)));
    painter.drawPolygon(head);
}

} // namespace

BoardPicture::BoardPicture(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("board.picture"));
    setMinimumHeight(150);
}

void BoardPicture::set(const Board& board) {
    board_ = board;
    setAccessibleName(
        tr("Drift board from above, %n roll(s)", nullptr, static_cast<int>(board.rolls.size())));
    update();
}

void BoardPicture::paintEvent(QPaintEvent*) {
    const Theme& t = theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF room = QRectF(rect()).adjusted(16, 8, -16, -22);
    // Nose to the right, so the car's left is up.
    const double along = room.width() * 0.92 / std::max(0.1, board_.over);
    double widest = std::abs(board_.target) + board_.tolerance;
    for (const double roll : board_.rolls)
        widest = std::max(widest, std::abs(roll));
    const double aside = std::min(along * sideways_scale, 0.45 * room.height() / std::max(0.02, widest));
    const auto place = [&](double s, double d) {
        return QPointF(room.left() + s * along, room.center().y() - d * aside);
    };
    painter.setPen(QPen(t.wood_ink, 1));
    painter.setBrush(t.wood);
    painter.drawRoundedRect(room, 3, 3);

    painter.setPen(QPen(t.wood_ink, 1, Qt::DashDotLine));
    painter.drawLine(place(0, 0), place(board_.over, 0));
    const QPointF low = place(board_.over, board_.target - board_.tolerance);
    const QPointF high = place(board_.over, board_.target + board_.tolerance);
    QColor band = t.good;
    band.setAlpha(110);
    painter.fillRect(QRectF(QPointF(low.x() - 5, high.y()), QPointF(low.x() + 5, low.y())), band);
    painter.setPen(QPen(t.ink, 2));
    painter.drawLine(place(board_.over, board_.target) - QPointF(8, 0),
                     place(board_.over, board_.target) + QPointF(8, 0));

    const auto path = [&](double drift) {
        QPainterPath curve(place(0, 0));
        constexpr int steps = 24;
        for (int i = 1; i <= steps; ++i) {
            const double s = board_.over * i / steps;
            curve.lineTo(place(s, drift * s * s / (board_.over * board_.over)));
        }
        return curve;
    };
    painter.setBrush(Qt::NoBrush);
    if (board_.believed) {
        painter.setPen(QPen(t.accent, 2));
        painter.drawPath(path(*board_.believed));
    }
    painter.setPen(QPen(t.ink, 1.5));
    for (const double roll : board_.rolls) {
        const QPointF at = place(board_.over, roll);
        painter.drawLine(at - QPointF(4, 4), at + QPointF(4, 4));
        painter.drawLine(at - QPointF(4, -4), at + QPointF(4, -4));
    }
    painter.setFont(text_font(0.85));
    painter.setPen(t.faint_ink);
    painter.drawText(
        QRectF(16, height() - 20, width() - 32, 18), Qt::AlignLeft | Qt::AlignVCenter,
        tr("From above, the car rolls to the right. × a roll, — the target. Sideways drawn %1 times "
           "as large.")
            .arg(QString::number(aside / along, 'f', 1)));
}

AxleHeadPicture::AxleHeadPicture(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("head.picture"));
    setMinimumSize(150, 150);
}

void AxleHeadPicture::set(double turn, std::optional<double> by) {
    turn_ = turn;
    by_ = by;
    update();
}

void AxleHeadPicture::paintEvent(QPaintEvent*) {
    const Theme& t = theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QPointF middle = QRectF(rect()).center() - QPointF(0, 8);
    const double radius = 0.5 * std::min(width(), height()) - 26;
    const auto at = [&](double turn, double r) {
        return middle + r * QPointF(std::sin(turn), -std::cos(turn));
    };
    painter.setPen(QPen(t.metal_ink, 1.5));
    painter.setBrush(t.axle);
    painter.drawEllipse(middle, radius, radius);
    painter.setPen(QPen(t.faint_ink, 1, Qt::DashDotLine));
    painter.drawLine(at(0, radius + 8), at(std::numbers::pi, radius + 8));
    painter.setPen(QPen(t.ink, 4, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(middle, at(turn_, radius - 5));
    if (by_ && *by_ != 0) {
        painter.setPen(QPen(t.accent, 3, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(at(turn_ + *by_, radius - 14), at(turn_ + *by_, radius - 2));
        const double r = radius + 9;
        const QRectF arc(middle - QPointF(r, r), QSizeF(2 * r, 2 * r));
        constexpr double sixteenth = 16 * 180 / std::numbers::pi;
        painter.drawArc(arc, static_cast<int>((std::numbers::pi / 2 - turn_) * sixteenth),
                        static_cast<int>(-*by_ * sixteenth));
        painter.setBrush(t.accent);
        painter.setPen(Qt::NoPen);
        arrow_head(painter, at(turn_ + *by_, r), turn_ + *by_ + (*by_ > 0 ? 0 : std::numbers::pi), 10);
    }
    painter.setPen(t.faint_ink);
    painter.setFont(text_font(0.85));
    painter.drawText(QRectF(0, height() - 18, width(), 18), Qt::AlignHCenter, tr("axle seen from its head"));
}

CantPicture::CantPicture(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("cant.picture"));
    setMinimumHeight(170);
}

void CantPicture::set(const Pair& pair) {
    pair_ = pair;
    update();
}

void CantPicture::paintEvent(QPaintEvent*) {
    const Theme& t = theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double span = 2 * (pair_.track_half + 2 * pair_.wheel_width);
    const double tall = 2.5 * pair_.wheel_radius;
    const double scale = std::min((width() - 40) / span, (height() - 40) / tall);
    // Seen from behind: the car's left is on the left.
    const double lane = height() - 30.0;
    const auto place = [&](double y, double z) {
        return QPointF(0.5 * width() - y * scale, lane - z * scale);
    };

    painter.setPen(QPen(t.ink, 1.5));
    painter.drawLine(QPointF(12, lane), QPointF(width() - 12, lane));
    const double bottom = pair_.wheel_radius - pair_.axle_height;
    if (pair_.rail) {
        painter.setBrush(t.wood);
        painter.setPen(QPen(t.wood_ink, 1));
        painter.drawRect(QRectF(place(pair_.rail->x() / 2, pair_.rail->y()), place(-pair_.rail->x() / 2, 0)));
    }
    painter.setBrush(t.wood);
    painter.setPen(QPen(t.wood_ink, 1.2));
    painter.drawRect(
        QRectF(place(pair_.wood_half, bottom + pair_.wood_height), place(-pair_.wood_half, bottom)));

    for (const bool left : {true, false}) {
        const double side = left ? 1 : -1;
        const double cant = lean_scale * (left ? pair_.left_cant : pair_.right_cant);
        painter.save();
        // The wheel leans about its lowest point; a positive cant lifts the axle's outer end.
        painter.translate(place(side * pair_.track_half, 0));
        painter.rotate((left ? 1 : -1) * cant * 180 / std::numbers::pi);
        const double w = pair_.wheel_width * scale, r = pair_.wheel_radius * scale;
        painter.setPen(QPen(t.axle, 4));
        painter.drawLine(QPointF(-side * w * 0.9, -r), QPointF(side * w * 1.6, -r));
        painter.setPen(QPen(t.wheel_ink, 1.2));
        painter.setBrush(t.wheel);
        painter.drawRoundedRect(QRectF(-w / 2, -2 * r, w, 2 * r), 2, 2);
        painter.setPen(QPen(t.metal_ink, 1));
        painter.setBrush(t.axle);
        painter.drawRect(QRectF(left ? -w * 0.9 : w * 0.65, -r - 5, w * 0.25, 10));
        painter.restore();
    }
    painter.setPen(t.faint_ink);
    painter.setFont(text_font(0.85));
    painter.drawText(QRectF(12, height() - 22, width() - 24, 20), Qt::AlignLeft | Qt::AlignVCenter,
                     tr("From behind. Lean drawn three times as large."));
}

} // namespace rampwright::ui

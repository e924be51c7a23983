#include "shaded/car_picture.hpp"

#include "look/theme.hpp"
#include "session/session.hpp"

#include <rampwright/core/constants.hpp>

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QTimer>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

constexpr Viewpoint first_look{52 * degree, 24 * degree};
constexpr double lowest_raise = -15 * degree, highest_raise = 85 * degree;
constexpr int fine_samples = 3, quick_samples = 1, settle_ms = 120;
constexpr int decal_pixels = 160, many_pixels = 400'000;

/// Coverage of something painted in white on nothing.
std::vector<std::uint8_t> mask_of(const QImage& image) {
    std::vector<std::uint8_t> mask;
    mask.reserve(static_cast<std::size_t>(image.width()) * static_cast<std::size_t>(image.height()));
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            mask.push_back(static_cast<std::uint8_t>(qAlpha(image.pixel(x, y))));
    return mask;
}

} // namespace

CarPicture::CarPicture(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), from_(first_look), settle_(new QTimer(this)) {
    setObjectName(QStringLiteral("picture"));
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::OpenHandCursor);
    setAccessibleName(tr("Picture of the car"));
    setWhatsThis(
        tr("The whole car as it will be. Drag it to turn it, or use the arrow keys; Home brings the first "
           "look back. A double click or Enter shows it large."));
    settle_->setSingleShot(true);
    settle_->setInterval(settle_ms);
    connect(settle_, &QTimer::timeout, this, [this] { ask(fine_samples); });
    connect(&maker_, &PictureMaker::made, this, [this](const QImage& picture) {
        picture_ = picture;
        update();
    });
    const auto anew = [this] {
        // While a piece is dragged the drawing has the processor; the picture follows in fewer samples.
        ask(session_.in_gesture() ? quick_samples : fine_samples);
        if (session_.in_gesture()) settle_->start();
    };
    connect(&session_, &Session::changed, this, anew);
    connect(&session_, &Session::car_chosen, this, anew);
    describe();
}

void CarPicture::set_viewpoint(const Viewpoint& from) {
    from_.turn = std::remainder(from.turn, 360 * degree);
    from_.raise = std::clamp(from.raise, lowest_raise, highest_raise);
    describe();
    ask(quick_samples);
    settle_->start();
}

void CarPicture::describe() {
    const int turn = static_cast<int>(std::lround(from_.turn / degree));
    const int raise = static_cast<int>(std::lround(from_.raise / degree));
    const QString around = turn >= 0 ? tr("%1 degrees from its front towards its right").arg(turn)
                                     : tr("%1 degrees from its front towards its left").arg(-turn);
    const QString height =
        raise >= 0 ? tr("%1 degrees from above").arg(raise) : tr("%1 degrees from below").arg(-raise);
    setAccessibleDescription(tr("Seen %1, %2. The arrow keys turn it.").arg(around, height));
    QAccessibleEvent event(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&event);
}

void CarPicture::draw_number() {
    const std::string& number = session_.plan().number;
    if (number == number_shown_) return;
    number_shown_ = number;
    number_ = {};
    if (number.empty()) return;
    QImage paper(decal_pixels, decal_pixels, QImage::Format_ARGB32_Premultiplied), ink = paper;
    paper.fill(Qt::transparent);
    ink.fill(Qt::transparent);
    constexpr double edge = decal_pixels * 0.04;
    const QRectF disc(edge, edge, decal_pixels - 2 * edge, decal_pixels - 2 * edge);
    QPainter on_paper(&paper), in_ink(&ink);
    for (QPainter* painter : {&on_paper, &in_ink})
        painter->setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    on_paper.setBrush(Qt::white);
    on_paper.setPen(Qt::NoPen);
    on_paper.drawEllipse(disc);
    QFont font = text_font(1, true);
    const QString text = QString::fromStdString(number).left(4);
    font.setPixelSize(text.size() > 2 ? decal_pixels / 3 : decal_pixels * 5 / 8);
    in_ink.setFont(font);
    in_ink.setPen(Qt::white);
    in_ink.drawText(disc, Qt::AlignCenter, text);
    on_paper.end();
    in_ink.end();
    number_ = {decal_pixels, mask_of(paper), mask_of(ink)};
}

void CarPicture::ask(int samples) {
    if (!isVisible() || width() < 8 || height() < 8) return;
    stale_ = samples < fine_samples;
    draw_number();
    PictureJob job;
    job.plan = session_.plan();
    job.scale_division = session_.project().scale.division;
    job.from = from_;
    job.pixel_ratio = devicePixelRatioF();
    job.size =
        QSize(static_cast<int>(width() * job.pixel_ratio), static_cast<int>(height() * job.pixel_ratio));
    job.samples = samples == fine_samples && job.size.width() * job.size.height() > many_pixels
                      ? fine_samples - 1
                      : samples;
    job.dark = theme().appearance == Appearance::dark;
    job.number = number_;
    maker_.want(std::move(job));
}

void CarPicture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    if (!picture_.isNull()) {
        // Until one of the right size is there the old one stands in its middle.
        const QSizeF size = picture_.deviceIndependentSize();
        painter.drawImage(QPointF((width() - size.width()) / 2, (height() - size.height()) / 2), picture_);
    }
    if (underMouse() || hasFocus()) {
        painter.setFont(text_font(0.85));
        painter.setPen(theme().faint_ink);
        painter.drawText(rect().adjusted(4, 2, -4, -3), Qt::AlignHCenter | Qt::AlignBottom,
                         tr("Drag to turn"));
    }
    if (hasFocus()) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(theme().accent, 1.5));
        painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
}

void CarPicture::showEvent(QShowEvent*) {
    ask(fine_samples); // it was not kept up to date while nobody saw it
}

void CarPicture::resizeEvent(QResizeEvent*) {
    ask(quick_samples);
    settle_->start();
}

void CarPicture::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange) ask(fine_samples);
    QWidget::changeEvent(event);
}

void CarPicture::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return event->ignore();
    held_at_ = event->pos();
    held_from_ = from_;
    setCursor(Qt::ClosedHandCursor);
}

void CarPicture::mouseMoveEvent(QMouseEvent* event) {
    if (!held_at_) return;
    // Across the whole picture is half a turn; the car follows the hand.
    const QPoint moved = event->pos() - *held_at_;
    const double per_pixel = 180 * degree / std::max(120, width());
    set_viewpoint({held_from_.turn - moved.x() * per_pixel, held_from_.raise + moved.y() * per_pixel});
}

void CarPicture::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    held_at_.reset();
    setCursor(Qt::OpenHandCursor);
}

void CarPicture::mouseDoubleClickEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) Q_EMIT enlarge_wanted();
}

void CarPicture::keyPressEvent(QKeyEvent* event) {
    const double step = (event->modifiers() & Qt::ShiftModifier     ? 15.
                         : event->modifiers() & Qt::ControlModifier ? 1.
                                                                    : 5.) *
                        degree;
    Viewpoint to = from_;
    switch (event->key()) {
    case Qt::Key_Left:
        to.turn += step;
        break;
    case Qt::Key_Right:
        to.turn -= step;
        break;
    case Qt::Key_Up:
        to.raise -= step;
        break;
    case Qt::Key_Down:
        to.raise += step;
        break;
    case Qt::Key_Home:
        to = first_look;
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        Q_EMIT enlarge_wanted();
        return;
    default:
        QWidget::keyPressEvent(event);
        return;
    }
    set_viewpoint(to);
}

void CarPicture::enterEvent(QEnterEvent*) {
    update();
}

void CarPicture::leaveEvent(QEvent*) {
    update();
}

} // namespace rampwright::ui

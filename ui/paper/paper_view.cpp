#include "paper/paper_view.hpp"

#include "look/theme.hpp"
#include "paper/paper_desk.hpp"
#include "sheet/paint.hpp"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

constexpr int page_gap = 14, desk_edge = 14;
constexpr double least_zoom = 0.2, greatest_zoom = 8, zoom_step = 1.2;
/// Pictures of pages far out of sight are let go.
constexpr std::size_t kept_pictures = 6;

} // namespace

PaperView::PaperView(PaperDesk& desk, QWidget* parent) : QAbstractScrollArea(parent), desk_(desk) {
    setObjectName(QStringLiteral("pages"));
    setAccessibleName(tr("Pages of the build sheet"));
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    viewport()->setCursor(Qt::OpenHandCursor);
    verticalScrollBar()->setAccessibleName(tr("Scroll pages"));
    horizontalScrollBar()->setAccessibleName(tr("Scroll across the page"));
    connect(&desk_, &PaperDesk::changed, this, &PaperView::refresh);
}

std::size_t PaperView::page_count() const {
    const paper::Sheet* sheet = desk_.sheet();
    return sheet ? sheet->pages.size() : 0;
}

double PaperView::pixels_per_mm() const {
    const double width = paper::size_of(desk_.chosen_paper()).width();
    return std::max(50.0, viewport()->width() - 2.0 * desk_edge) / width * zoom_;
}

QSizeF PaperView::page_size() const {
    return paper::size_of(desk_.chosen_paper()) * pixels_per_mm();
}

QRectF PaperView::page_place(std::size_t page) const {
    const QSizeF size = page_size();
    const double spare = viewport()->width() - size.width();
    const double left = spare > 2 * desk_edge ? spare / 2 : desk_edge - horizontalScrollBar()->value();
    const double top = desk_edge + double(page) * (size.height() + page_gap) - verticalScrollBar()->value();
    return {QPointF(std::round(left), std::round(top)), size};
}

std::size_t PaperView::page() const {
    const std::size_t count = page_count();
    const double middle = verticalScrollBar()->value() + viewport()->height() / 2.0 - desk_edge;
    const double at = std::floor(middle / (page_size().height() + page_gap));
    return count == 0 ? 0 : static_cast<std::size_t>(std::clamp(at, 0.0, double(count - 1)));
}

void PaperView::show_page(std::size_t page) {
    verticalScrollBar()->setValue(static_cast<int>(double(page) * (page_size().height() + page_gap)));
}

void PaperView::zoom_by(double factor) {
    const double before = page_size().height() + page_gap;
    const double middle = (verticalScrollBar()->value() + viewport()->height() / 2.0) / before;
    zoom_ = std::clamp(zoom_ * factor, least_zoom, greatest_zoom);
    pictures_.clear();
    lay_out();
    verticalScrollBar()->setValue(
        static_cast<int>(middle * (page_size().height() + page_gap) - viewport()->height() / 2.0));
    viewport()->update();
}

void PaperView::zoom_to_width() {
    zoom_by(1 / zoom_);
}

void PaperView::refresh() {
    stale_ = true;
    pictures_.clear();
    // A hidden view makes no sheet: drags elsewhere stay quick.
    if (!isVisible()) return;
    lay_out();
    viewport()->update();
    Q_EMIT page_changed();
}

void PaperView::lay_out() {
    stale_ = false;
    const QSizeF size = page_size();
    const auto count = static_cast<double>(page_count());
    const double height = 2 * desk_edge + count * size.height() + std::max(0.0, count - 1) * page_gap;
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setSingleStep(40);
    verticalScrollBar()->setRange(0, std::max(0, static_cast<int>(height) - viewport()->height()));
    const double width = size.width() + 2 * desk_edge;
    horizontalScrollBar()->setPageStep(viewport()->width());
    horizontalScrollBar()->setSingleStep(40);
    horizontalScrollBar()->setRange(0, std::max(0, static_cast<int>(width) - viewport()->width()));
}

const QImage& PaperView::picture(std::size_t page) {
    const auto found = pictures_.find(page);
    if (found != pictures_.end()) return found->second;
    if (pictures_.size() >= kept_pictures) {
        const auto far =
            std::max_element(pictures_.begin(), pictures_.end(), [&](const auto& a, const auto& b) {
                const auto away = [&](std::size_t n) { return n > page ? n - page : page - n; };
                return away(a.first) < away(b.first);
            });
        pictures_.erase(far);
    }
    const double ratio = devicePixelRatioF();
    QImage image = paper::to_picture(*desk_.sheet(), page, pixels_per_mm() * ratio * 25.4);
    image.setDevicePixelRatio(ratio);
    return pictures_.emplace(page, std::move(image)).first->second;
}

void PaperView::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    painter.fillRect(viewport()->rect(), theme().bench);
    if (!desk_.sheet()) {
        painter.setPen(theme().ink);
        painter.drawText(viewport()->rect().adjusted(24, 24, -24, -24), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("There is no sheet to show.\n%1").arg(desk_.problem()));
        return;
    }
    if (stale_) lay_out();
    for (std::size_t n = 0; n < page_count(); ++n) {
        const QRectF place = page_place(n);
        if (!place.intersects(viewport()->rect())) continue;
        painter.drawImage(place.topLeft(), picture(n));
        painter.setPen(theme().paper_edge);
        painter.drawRect(place.adjusted(-0.5, -0.5, 0.5, 0.5));
    }
}

void PaperView::resizeEvent(QResizeEvent*) {
    pictures_.clear();
    if (isVisible()) lay_out();
}

void PaperView::showEvent(QShowEvent* event) {
    QAbstractScrollArea::showEvent(event);
    lay_out();
    Q_EMIT page_changed();
}

void PaperView::scrollContentsBy(int, int) {
    viewport()->update();
    Q_EMIT page_changed();
}

void PaperView::wheelEvent(QWheelEvent* event) {
    if (event->modifiers() & Qt::ControlModifier)
        zoom_by(std::pow(zoom_step, event->angleDelta().y() / 120.0));
    else
        QAbstractScrollArea::wheelEvent(event);
}

void PaperView::keyPressEvent(QKeyEvent* event) {
    const std::size_t now = page(), last = page_count() == 0 ? 0 : page_count() - 1;
    switch (event->key()) {
    case Qt::Key_PageDown:
        return show_page(std::min(now + 1, last));
    case Qt::Key_PageUp:
        return show_page(now == 0 ? 0 : now - 1);
    case Qt::Key_Home:
        return show_page(0);
    case Qt::Key_End:
        return show_page(last);
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        return zoom_by(zoom_step);
    case Qt::Key_Minus:
        return zoom_by(1 / zoom_step);
    case Qt::Key_0:
        return zoom_to_width();
    default:
        QAbstractScrollArea::keyPressEvent(event);
    }
}

void PaperView::mousePressEvent(QMouseEvent* event) {
    grabbed_ = event->pos();
}

void PaperView::mouseMoveEvent(QMouseEvent* event) {
    if (!(event->buttons() & (Qt::LeftButton | Qt::MiddleButton))) return;
    const QPoint by = event->pos() - grabbed_;
    grabbed_ = event->pos();
    verticalScrollBar()->setValue(verticalScrollBar()->value() - by.y());
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() - by.x());
}

} // namespace rampwright::ui

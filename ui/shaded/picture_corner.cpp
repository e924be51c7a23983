#include "shaded/picture_corner.hpp"

#include "drawing/car_canvas.hpp"
#include "look/theme.hpp"
#include "shaded/car_picture.hpp"

#include <QDialog>
#include <QEvent>
#include <QTimer>
#include <QVBoxLayout>

namespace rampwright::ui {
namespace {

constexpr int picture_gap = 10;
constexpr QSize least_picture{120, 80};

} // namespace

PictureCorner::PictureCorner(Session& session, CarCanvas& canvas)
    : QObject(&canvas), session_(session), canvas_(canvas), picture_(new CarPicture(session, &canvas)) {
    picture_->hide();
    canvas_.installEventFilter(this);
    connect(picture_, &CarPicture::enlarge_wanted, this, &PictureCorner::enlarge);
}

bool PictureCorner::eventFilter(QObject* watched, QEvent* event) {
    // The map changes with the window, the zoom and the car; each of them paints anew.
    if (watched == &canvas_ && event->type() == QEvent::Paint)
        QTimer::singleShot(0, this, &PictureCorner::place);
    return QObject::eventFilter(watched, event);
}

void PictureCorner::place() {
    const DrawingMap& map = canvas_.map();
    const QRectF front = map.frame(View::front), block = title_block(map);
    const double bottom = block.isNull() ? map.paper().bottom() : block.top();
    const QRect room = QRectF(QPointF(map.paper().left() + sheet::ruler + 14, front.bottom()),
                              QPointF(front.right() - 14, bottom))
                           .adjusted(0, picture_gap, 0, -picture_gap)
                           .toRect();
    if (room == placed_) return;
    placed_ = room;
    const bool fits = room.width() >= least_picture.width() && room.height() >= least_picture.height() &&
                      canvas_.rect().contains(room);
    if (fits) picture_->setGeometry(room);
    picture_->setVisible(fits);
}

void PictureCorner::enlarge() {
    if (!large_) {
        large_ = new QDialog(canvas_.window());
        large_->setObjectName(QStringLiteral("large picture"));
        large_->setWindowTitle(tr("The Whole Car"));
        auto* column = new QVBoxLayout(large_);
        large_picture_ = new CarPicture(session_, large_);
        large_picture_->setObjectName(QStringLiteral("large picture.car"));
        column->addWidget(large_picture_);
        connect(large_picture_, &CarPicture::enlarge_wanted, large_, &QDialog::close);
        large_->resize(canvas_.window()->size() * 0.8);
    }
    large_picture_->set_viewpoint(picture_->viewpoint());
    large_->setBackgroundRole(QPalette::Base);
    large_->show();
    large_->raise();
    large_->activateWindow();
    large_picture_->setFocus();
}

} // namespace rampwright::ui

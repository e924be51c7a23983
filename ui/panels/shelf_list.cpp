#include "panels/shelf_list.hpp"

#include "drawing/car_shape.hpp"
#include "drawing/pens.hpp"
#include "drawing/shelf_drop.hpp"
#include "look/icon.hpp"
#include "look/theme.hpp"
#include "text/figure_text.hpp"

#include <QDrag>
#include <QKeyEvent>
#include <QPainter>

#include <algorithm>

namespace rampwright::ui {
namespace {

constexpr int icon_side = 22;

/// A piece to scale with its neighbours, as far as the icon has room; putty as a lump.
QIcon piece_icon(const ShelfPiece& piece, double ratio) {
    return drawn_icon({2 * icon_side, icon_side}, ratio, [&](QPainter& painter) {
        painter.translate(icon_side, icon_side / 2.0);
        QPainterPath outline;
        if (piece.shape == PieceShape::putty) {
            outline.addRoundedRect(QRectF(-11, -6, 22, 12), 6, 6);
        } else {
            // 36 mm are as wide as the icon.
            const double scale = 2 * icon_side / 40e-3;
            const QPainterPath real = piece_outline(View::top, ghost_of(piece, {}));
            const QRectF box = real.boundingRect();
            const double fit =
                std::min({scale, (2 * icon_side - 3) / box.width(), (icon_side - 3) / box.height()});
            outline = QTransform::fromScale(fit, fit).map(real);
        }
        painter.fillPath(outline, theme().metal);
        painter.setPen(outline_pen(theme().metal_ink, 1.1));
        painter.drawPath(outline);
    });
}

} // namespace

ShelfList::ShelfList(Session& session, QWidget* parent) : QListWidget(parent), session_(session) {
    setObjectName(QStringLiteral("shelf"));
    setAccessibleName(tr("Pieces on the shelf"));
    setWhatsThis(
        tr("Drag a piece to the drawing, or click it and then click where it should lie. Over a pocket "
           "or a bore it goes into it. With the keyboard: choose a row and put it in the car."));
    setIconSize({2 * icon_side, icon_side});
    setDragEnabled(true);
    setDragDropMode(QAbstractItemView::DragOnly);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(this, &QListWidget::itemClicked, this, [this] {
        if (const auto shelf = chosen()) Q_EMIT picked(*shelf);
    });
    connect(&session_, &Session::changed, this, &ShelfList::refresh);
    connect(&session_, &Session::car_chosen, this, &ShelfList::refresh);
    refresh();
}

std::optional<std::size_t> ShelfList::chosen() const {
    const QListWidgetItem* item = currentItem();
    if (!item || !(item->flags() & Qt::ItemIsEnabled)) return {};
    return static_cast<std::size_t>(currentRow());
}

void ShelfList::startDrag(Qt::DropActions) {
    const auto shelf = chosen();
    if (!shelf) return;
    auto* drag = new QDrag(this);
    drag->setMimeData(shelf_mime(*shelf).release());
    drag->setPixmap(currentItem()->icon().pixmap(iconSize()));
    drag->exec(Qt::CopyAction);
}

void ShelfList::refresh() {
    const auto& shelf = session_.project().shelf;
    const UnitSystem units = session_.project().units;
    while (count() > static_cast<int>(shelf.size()))
        delete takeItem(count() - 1);
    for (std::size_t i = 0; i < shelf.size(); ++i) {
        if (static_cast<int>(i) == count()) addItem(new QListWidgetItem);
        QListWidgetItem* row = item(static_cast<int>(i));
        const auto left = left_on_shelf(session_.project(), session_.car(), i);
        const QString what = tr("%1, %2").arg(QString::fromStdString(shelf[i].name),
                                              quantity_text(shelf[i].mass, Quantity::mass, units));
        row->setText(!left       ? what
                     : *left > 0 ? tr("%1\n%2 left").arg(what).arg(*left)
                                 : tr("%1\nnone left").arg(what));
        row->setFlags(left && *left <= 0 ? Qt::NoItemFlags
                                         : Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsDragEnabled);
        row->setIcon(piece_icon(shelf[i], devicePixelRatioF()));
    }
}

void ShelfList::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        Q_EMIT wanted();
    else
        QListWidget::keyPressEvent(event);
}

void ShelfList::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange) refresh();
    QListWidget::changeEvent(event);
}

} // namespace rampwright::ui

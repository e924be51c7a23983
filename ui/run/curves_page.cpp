#include "run/curves_page.hpp"

#include "run/curve_view.hpp"

#include <QApplication>
#include <QClipboard>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPainter>
#include <QPushButton>
#include <QSvgGenerator>
#include <QVBoxLayout>

namespace rampwright::ui {
namespace {

constexpr QSize picture_size(1100, 620);
constexpr double picture_scale = 2; // for print and projector

} // namespace

CurvesPage::CurvesPage(Session& session, QWidget* parent)
    : QWidget(parent), view_(new CurveView(session, this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    column->addWidget(view_, 1);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(8, 0, 8, 0);
    auto* hint = new QLabel(tr("Mouse or arrow keys: the numbers at a place."), this);
    hint->setForegroundRole(QPalette::PlaceholderText);
    row->addWidget(hint, 1);
    const auto add = [&](const char* name, const QString& text, auto slot) {
        auto* button = new QPushButton(text, this);
        button->setObjectName(QLatin1String(name));
        connect(button, &QPushButton::clicked, this, slot);
        row->addWidget(button);
    };
    add("curves.copy", tr("Copy &Picture"), [this] {
        QPixmap pixmap(picture_size * picture_scale);
        pixmap.setDevicePixelRatio(picture_scale);
        QPainter painter(&pixmap);
        view_->paint(painter, picture_size);
        painter.end();
        QApplication::clipboard()->setPixmap(pixmap);
    });
    add("curves.save", tr("&Save Picture…"), [this] { choose_file(); });
    add("curves.numbers", tr("Copy &Numbers"),
        [this] { QApplication::clipboard()->setText(view_->table()); });
    column->addLayout(row);
}

bool CurvesPage::save_picture(const QString& path) const {
    if (path.endsWith(QStringLiteral(".svg"), Qt::CaseInsensitive)) {
        QSvgGenerator svg;
        svg.setFileName(path);
        svg.setSize(picture_size);
        svg.setViewBox(QRect(QPoint(0, 0), picture_size));
        svg.setTitle(tr("A heat along the lane"));
        QPainter painter;
        if (!painter.begin(&svg)) return false;
        view_->paint(painter, picture_size);
        return painter.end();
    }
    QImage image(picture_size * picture_scale, QImage::Format_RGB32);
    image.setDevicePixelRatio(picture_scale);
    QPainter painter(&image);
    view_->paint(painter, picture_size);
    painter.end();
    return image.save(path);
}

void CurvesPage::choose_file() {
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save the Picture"), QStringLiteral("heat.png"), tr("Pictures (*.png *.svg)"));
    if (path.isEmpty() || save_picture(path)) return;
    QMessageBox::warning(this, tr("The picture was not saved"),
                         tr("%1 cannot be written; choose another place or name.").arg(path));
}

} // namespace rampwright::ui

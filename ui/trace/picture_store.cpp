#include "trace/picture_store.hpp"

#include "session/aside.hpp"

#include <QFileInfo>
#include <QImageReader>
#include <QPainter>
#include <QSvgRenderer>

namespace rampwright::ui {
namespace {

constexpr int most_megabytes = 1024; ///< of a picture as it is read: about 250 million pixels

QSize fitting(QSize size) {
    return size.scaled(PictureStore::most_pixels, PictureStore::most_pixels, Qt::KeepAspectRatio);
}

/// A drawing, painted sharp: the reader of pictures would round its sides to pixels before they are enlarged.
QImage painted(const QString& path) {
    QSvgRenderer renderer(path);
    const QSizeF sides = renderer.isValid() ? renderer.viewBoxF().size() : QSizeF();
    if (sides.isEmpty()) return {};
    constexpr int most = PictureStore::most_pixels;
    const QSize size = sides.scaled(most, most, Qt::KeepAspectRatio).toSize().expandedTo({1, 1});
    QImage image(size, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    renderer.render(&painter);
    return image;
}

} // namespace

PictureStore::Picture PictureStore::load(const QString& path) {
    Picture picture;
    picture.read = true;
    if (!QFileInfo(path).isFile()) {
        picture.fault = tr("The picture is not there: %1").arg(path);
        return picture;
    }
    QImageReader::setAllocationLimit(most_megabytes);
    QImageReader reader(path);
    reader.setAutoTransform(true); // as the camera was held
    reader.setDecideFormatFromContent(true);
    const QSize size = reader.size();
    const bool too_large = size.width() > most_pixels || size.height() > most_pixels;
    if (too_large && !size.isEmpty()) reader.setScaledSize(fitting(size));
    QImage image = reader.format().startsWith("svg") ? painted(path) : reader.read();
    if (image.isNull()) {
        picture.fault = tr("The picture %1 cannot be read: %2").arg(path, reader.errorString());
        return picture;
    }
    if (image.width() > most_pixels || image.height() > most_pixels)
        image = image.scaled(fitting(image.size()), Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    picture.image = image.convertToFormat(QImage::Format_ARGB32_Premultiplied);
    return picture;
}

const PictureStore::Picture& PictureStore::picture(const QString& path) {
    const auto known = pictures_.constFind(path);
    if (known != pictures_.constEnd()) return *known;
    Picture& waiting = pictures_[path];
    work_aside(
        this, [path] { return load(path); },
        [this, path, sent = generation_](const Picture& picture) {
            if (sent != generation_) return;
            pictures_[path] = picture;
            Q_EMIT changed();
        });
    return waiting;
}

void PictureStore::try_again() {
    const bool any = pictures_.removeIf([](const auto& entry) { return !entry.value().fault.isEmpty(); }) > 0;
    if (any) Q_EMIT changed();
}

void PictureStore::clear() {
    ++generation_;
    pictures_.clear();
}

bool PictureStore::is_picture(const QString& path) {
    return QImageReader::supportedImageFormats().contains(QFileInfo(path).suffix().toLower().toLatin1());
}

QString PictureStore::file_filter() {
    QStringList endings;
    for (const QByteArray& format : QImageReader::supportedImageFormats())
        endings << QStringLiteral("*.") + QLatin1String(format);
    return tr("Pictures (%1);;All files (*)").arg(endings.join(QLatin1Char(' ')));
}

} // namespace rampwright::ui

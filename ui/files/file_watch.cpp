#include "files/file_watch.hpp"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>

namespace rampwright::ui {
namespace {

/// A save is several events; they are looked at once they have settled.
constexpr int settle_ms = 200;

} // namespace

FileWatch::FileWatch(QObject* parent) : QObject(parent) {
    settle_.setSingleShot(true);
    settle_.setInterval(settle_ms);
    connect(&watcher_, &QFileSystemWatcher::fileChanged, &settle_, qOverload<>(&QTimer::start));
    connect(&watcher_, &QFileSystemWatcher::directoryChanged, &settle_, qOverload<>(&QTimer::start));
    connect(&settle_, &QTimer::timeout, this, &FileWatch::look);
}

void FileWatch::watch(const std::filesystem::path& path) {
    if (const QStringList old = watcher_.files() + watcher_.directories(); !old.isEmpty())
        watcher_.removePaths(old);
    settle_.stop();
    file_ = QString::fromStdString(path.string());
    known_ = digest();
    arm();
}

void FileWatch::arm() {
    if (file_.isEmpty()) return;
    // A file replaced by renaming drops its watch; its folder keeps its own.
    if (QFile::exists(file_)) watcher_.addPath(file_);
    watcher_.addPath(QFileInfo(file_).absolutePath());
}

void FileWatch::look() {
    arm();
    const QByteArray now = digest();
    // Away for a moment, or for good: what is open here is then all there is, and saving brings it back.
    if (now.isEmpty() || now == known_) return;
    known_ = now;
    Q_EMIT changed_outside();
}

QByteArray FileWatch::digest() const {
    QFile file(file_);
    if (file_.isEmpty() || !file.open(QIODevice::ReadOnly)) return {};
    QCryptographicHash hash(QCryptographicHash::Sha1);
    return hash.addData(&file) ? hash.result() : QByteArray();
}

} // namespace rampwright::ui

#include "files/file_claim.hpp"

#include <QCryptographicHash>
#include <QDir>
#include <QStandardPaths>

#include <utility>

namespace rampwright::ui {

FileClaim::FileClaim(QString folder) : folder_(std::move(folder)) {
    QDir().mkpath(folder_);
}

QString FileClaim::default_folder() {
    return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) + QStringLiteral("/open");
}

QString FileClaim::lock_name(const std::filesystem::path& path) const {
    // One name for a file, however it was reached.
    std::error_code error;
    const auto real = std::filesystem::weakly_canonical(path, error);
    const QByteArray name = QByteArray::fromStdString((error ? path : real).string());
    return folder_ + QLatin1Char('/') +
           QString::fromLatin1(QCryptographicHash::hash(name, QCryptographicHash::Sha1).toHex()) +
           QStringLiteral(".lock");
}

bool FileClaim::claim(const std::filesystem::path& path) {
    const QString name = path.empty() ? QString() : lock_name(path);
    if (lock_ && name == held_) return true;
    lock_.reset();
    held_ = name;
    if (name.isEmpty()) return true;
    auto lock = std::make_unique<QLockFile>(name);
    // Only a dead holder's claim is void, however old a living one's is.
    lock->setStaleLockTime(0);
    if (!lock->tryLock(0)) return lock->error() != QLockFile::LockFailedError;
    lock_ = std::move(lock);
    return true;
}

bool FileClaim::taken_elsewhere(const std::filesystem::path& path) const {
    const QString name = lock_name(path);
    if (lock_ && name == held_) return false;
    QLockFile lock(name);
    lock.setStaleLockTime(0);
    return !lock.tryLock(0) && lock.error() == QLockFile::LockFailedError;
}

} // namespace rampwright::ui

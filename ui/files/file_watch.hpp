#pragma once

#include <QByteArray>
#include <QFileSystemWatcher>
#include <QObject>
#include <QTimer>

#include <filesystem>

namespace rampwright::ui {

/// Notices when somebody else writes the open file. Our own saves are told by `watch` and are silent,
/// as is a write of the very same bytes.
class FileWatch : public QObject {
    Q_OBJECT

public:
    explicit FileWatch(QObject* parent = nullptr);
    /// From now on this file as it is; an empty path watches nothing.
    void watch(const std::filesystem::path& path);

Q_SIGNALS:
    void changed_outside();

private:
    void look();
    void arm();
    QByteArray digest() const;

    QString file_;
    QByteArray known_;
    QFileSystemWatcher watcher_;
    QTimer settle_;
};

} // namespace rampwright::ui

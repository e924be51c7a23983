#pragma once

#include <QObject>
#include <QStringList>

class QMenu;

namespace rampwright::ui {

/// The files opened or saved last, newest first, in a menu. A file that is gone stays listed, greyed
/// and marked, for it may come back with its disk.
class RecentFiles : public QObject {
    Q_OBJECT

public:
    explicit RecentFiles(QMenu& menu, QObject* parent = nullptr);
    void add(const QString& file);
    static QStringList files();

Q_SIGNALS:
    void chosen(const QString& file);

private:
    void fill();
    QMenu& menu_;
};

} // namespace rampwright::ui

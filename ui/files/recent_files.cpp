#include "files/recent_files.hpp"

#include <QAction>
#include <QFileInfo>
#include <QMenu>
#include <QSettings>

namespace rampwright::ui {
namespace {

constexpr int most_recent_files = 8;
const QString recent_key = QStringLiteral("files/recent");

} // namespace

RecentFiles::RecentFiles(QMenu& menu, QObject* parent) : QObject(parent), menu_(menu) {
    connect(&menu_, &QMenu::aboutToShow, this, &RecentFiles::fill);
    fill();
}

QStringList RecentFiles::files() {
    return QSettings().value(recent_key).toStringList();
}

void RecentFiles::add(const QString& file) {
    const QString whole = QFileInfo(file).absoluteFilePath();
    QStringList list = files();
    list.removeAll(whole);
    list.prepend(whole);
    QSettings().setValue(recent_key, QStringList(list.mid(0, most_recent_files)));
    fill();
}

void RecentFiles::fill() {
    menu_.clear();
    const QStringList list = files();
    for (qsizetype i = 0; i < list.size(); ++i) {
        const QFileInfo info(list[i]);
        QString name = info.fileName().replace(QLatin1Char('&'), QStringLiteral("&&"));
        if (!info.exists()) name = tr("%1 (not there now)").arg(name);
        QAction* action = menu_.addAction(i < 9 ? QStringLiteral("&%1 %2").arg(i + 1).arg(name) : name);
        action->setEnabled(info.exists());
        action->setToolTip(list[i]);
        connect(action, &QAction::triggered, this, [this, file = list[i]] { Q_EMIT chosen(file); });
    }
    menu_.setToolTipsVisible(true);
    menu_.setEnabled(!list.isEmpty());
    if (list.isEmpty()) return;
    menu_.addSeparator();
    connect(menu_.addAction(tr("&Empty This List")), &QAction::triggered, this, [this] {
        QSettings().remove(recent_key);
        fill();
    });
}

} // namespace rampwright::ui

#pragma once

#include <rampwright/project/document.hpp>

#include <QDateTime>
#include <QLockFile>
#include <QObject>
#include <QString>
#include <QThreadPool>
#include <QTimer>

#include <filesystem>
#include <memory>
#include <vector>

namespace rampwright::ui {

class Session;

/// Unsaved work that a program left behind which did not end by itself.
struct LeftWork {
    QString entry;              ///< the file it is kept in
    std::filesystem::path file; ///< the project it belongs to; empty: none yet
    QDateTime kept;
    Document document;
};

/// Keeps unsaved work in a folder of the person's own while the window is open, so that a crash or a
/// power cut costs seconds. Written by another thread a moment after the last change; gone once the
/// work is saved or thrown away on purpose.
class Recovery : public QObject {
    Q_OBJECT

public:
    Recovery(Session& session, const QString& folder, QObject* parent = nullptr);
    /// The clean end: nothing is left behind.
    ~Recovery() override;

    static QString default_folder();
    /// What dead programs left in a folder, newest first; entries that cannot be read are passed over.
    static std::vector<LeftWork> left_in(const QString& folder);
    static void throw_away(const LeftWork& work);

    /// Writes what is unsaved at once, and waits for it.
    void keep_now();

Q_SIGNALS:
    /// Said once for each reason why work cannot be kept.
    void cannot_keep(const QString& why);

private:
    void note_change();
    void keep();
    void forget();

    Session& session_;
    QString entry_;
    std::unique_ptr<QLockFile> lock_;
    QTimer delay_;
    QThreadPool writer_;
    QString last_trouble_;
    bool kept_ = false;
};

} // namespace rampwright::ui

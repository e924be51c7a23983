#include "files/recovery.hpp"

#include "session/session.hpp"
#include "text/figure_text.hpp"

#include <QDir>
#include <QStandardPaths>
#include <QUuid>

#include <algorithm>

namespace rampwright::ui {
namespace {

constexpr int keep_after_ms = 2000;
const char* const recovery_format = "rampwright-recovery";

std::filesystem::path as_path(const QString& name) {
    return name.toStdString();
}

QString lock_of(const QString& entry) {
    return entry + QStringLiteral(".lock");
}

/// The work and where it belongs, in one file, so that one rename puts both in place.
std::string envelope(const Document& document, const std::filesystem::path& file, const QDateTime& when) {
    Json whole;
    whole["format"] = recovery_format;
    whole["file"] = file.string();
    whole["kept"] = when.toString(Qt::ISODate).toStdString();
    whole["project"] = document.root;
    return whole.dump();
}

std::optional<LeftWork> read_entry(const QString& entry) {
    QFile file(entry);
    if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
    const Json whole = Json::parse(file.readAll().toStdString(), nullptr, false);
    if (!whole.is_object() || whole.value("format", "") != recovery_format || !whole.contains("project"))
        return std::nullopt;
    try {
        LeftWork work;
        work.entry = entry;
        work.file = whole.value("file", "");
        work.kept = QDateTime::fromString(QString::fromStdString(whole.value("kept", "")), Qt::ISODate);
        work.document = parse_document(whole["project"].dump());
        read_project(work.document);
        return work;
    } catch (const std::exception&) {
        return std::nullopt;
    }
}

} // namespace

Recovery::Recovery(Session& session, const QString& folder, QObject* parent)
    : QObject(parent), session_(session) {
    QDir().mkpath(folder);
    entry_ = folder + QLatin1Char('/') + QUuid::createUuid().toString(QUuid::WithoutBraces) +
             QStringLiteral(".json");
    lock_ = std::make_unique<QLockFile>(lock_of(entry_));
    lock_->setStaleLockTime(0);
    lock_->tryLock(0);
    // One writer: what was kept last is what stays.
    writer_.setMaxThreadCount(1);
    delay_.setSingleShot(true);
    delay_.setInterval(keep_after_ms);
    connect(&delay_, &QTimer::timeout, this, &Recovery::keep);
    connect(&session_, &Session::changed, this, &Recovery::note_change);
    connect(&session_, &Session::file_changed, this, &Recovery::note_change);
    connect(&session_.history(), &QUndoStack::cleanChanged, this, &Recovery::note_change);
}

Recovery::~Recovery() {
    delay_.stop();
    writer_.waitForDone();
    QFile::remove(entry_);
    lock_->unlock();
}

QString Recovery::default_folder() {
    return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) +
           QStringLiteral("/recovery");
}

std::vector<LeftWork> Recovery::left_in(const QString& folder) {
    std::vector<LeftWork> left;
    const QDir place(folder);
    for (const QString& name : place.entryList({QStringLiteral("*.json")}, QDir::Files)) {
        const QString entry = place.filePath(name);
        // A lock that can be taken has no living window behind it.
        QLockFile lock(lock_of(entry));
        lock.setStaleLockTime(0);
        if (!lock.tryLock(0)) continue;
        if (auto work = read_entry(entry)) left.push_back(std::move(*work));
    }
    std::sort(left.begin(), left.end(), [](const LeftWork& a, const LeftWork& b) { return a.kept > b.kept; });
    return left;
}

void Recovery::throw_away(const LeftWork& work) {
    QFile::remove(work.entry);
    QFile::remove(lock_of(work.entry));
}

void Recovery::note_change() {
    if (session_.has_unsaved_work() || session_.in_gesture()) {
        if (!delay_.isActive()) delay_.start();
    } else {
        delay_.stop();
        forget();
    }
}

void Recovery::keep() {
    if (!session_.has_unsaved_work()) return;
    kept_ = true;
    writer_.start([this, document = session_.shared_document(), file = session_.path(), entry = entry_] {
        QString trouble;
        try {
            write_file(as_path(entry), envelope(*document, file, QDateTime::currentDateTime()));
        } catch (const Problem& problem) {
            trouble = problem_text(problem);
        }
        QMetaObject::invokeMethod(this, [this, trouble] {
            if (!trouble.isEmpty() && trouble != last_trouble_) Q_EMIT cannot_keep(trouble);
            last_trouble_ = trouble;
        });
    });
}

void Recovery::keep_now() {
    delay_.stop();
    keep();
    writer_.waitForDone();
}

void Recovery::forget() {
    if (!std::exchange(kept_, false)) return;
    writer_.start([entry = entry_] { QFile::remove(entry); });
}

} // namespace rampwright::ui

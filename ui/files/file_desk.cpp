#include "files/file_desk.hpp"

#include "files/recent_files.hpp"
#include "panels/notice_bar.hpp"
#include "session/session.hpp"
#include "text/figure_text.hpp"

#include <QAction>
#include <QFile>
#include <QFileDialog>
#include <QLocale>
#include <QMenu>
#include <QMessageBox>

namespace rampwright::ui {
namespace {

QString shown(const std::filesystem::path& path) {
    return QString::fromStdString(path.string());
}

} // namespace

QString project_file_filter() {
    return FileDesk::tr("Rampwright projects (*.ramp.json);;All files (*)");
}

FileDesk::FileDesk(Session& session, QWidget& window, NoticeBar& notices, bool remember)
    : QObject(&window), session_(session), window_(window), notices_(notices), remember_(remember) {
    if (remember_) {
        claim_.emplace(FileClaim::default_folder());
        recovery_ = std::make_unique<Recovery>(session_, Recovery::default_folder());
        connect(recovery_.get(), &Recovery::cannot_keep, this, [this](const QString& why) {
            Q_EMIT said(tr("Unsaved work is not being kept aside: %1").arg(why));
        });
    }
    connect(&session_, &Session::file_changed, this, &FileDesk::take_up_file);
    connect(&watch_, &FileWatch::changed_outside, this, &FileDesk::meet_other_change);
}

void FileDesk::fill_menu(QMenu& menu) {
    // Some desktops leave a few standard keys unset: those are named outright.
    menu.addAction(tr("&New"), QKeySequence(QKeySequence::New), this, [this] { start_new(); });
    menu.addAction(tr("&Open…"), QKeySequence(QKeySequence::Open), this, [this] { choose_file(); });
    if (remember_) {
        recent_ = new RecentFiles(*menu.addMenu(tr("Open &Recent")), this);
        connect(recent_, &RecentFiles::chosen, this,
                [this](const QString& file) { open(file.toStdString()); });
    }
    menu.addSeparator();
    menu.addAction(tr("&Save"), QKeySequence(QKeySequence::Save), this, [this] { save(); });
    menu.addAction(tr("Save &As…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S), this,
                   [this] { save_as(); });
    take_up_file();
}

void FileDesk::take_up_file() {
    const auto& path = session_.path();
    watch_.watch(path);
    notices_.drop(QStringLiteral("changed"));
    notices_.drop(QStringLiteral("twice"));
    if (recent_ && !path.empty()) recent_->add(shown(path));
    if (claim_ && !claim_->claim(path))
        notices_.tell(QStringLiteral("twice"),
                      tr("%1 is open in another window too. What is saved in one replaces what was saved in "
                         "the other.")
                          .arg(shown(path.filename())),
                      {{tr("Save as Another File…"), [this] { save_as(); }}, {tr("Go On"), {}}});
}

void FileDesk::meet_other_change() {
    if (!session_.has_unsaved_work()) {
        reload();
        return;
    }
    notices_.tell(
        QStringLiteral("changed"),
        tr("%1 was changed by another program. You have unsaved changes here.")
            .arg(shown(session_.path().filename())),
        {{tr("Take Theirs"), [this] { reload(); }}, {tr("Keep Mine"), [this] { session_.mark_unsaved(); }}});
}

void FileDesk::reload() {
    try {
        const std::size_t car = session_.car();
        const auto path = session_.path();
        session_.open(path);
        session_.choose_car(car);
        Q_EMIT said(
            tr("%1 was changed by another program and has been read again.").arg(shown(path.filename())));
    } catch (const Problem& problem) {
        // Half written, or damaged: what is open stays, and is all there is.
        session_.mark_unsaved();
        notices_.tell(
            QStringLiteral("changed"),
            tr("The file was changed by another program and cannot be read: %1").arg(problem_text(problem)),
            {{tr("Keep Mine"), {}}});
    }
}

void FileDesk::offer_left_work() {
    if (!remember_) return;
    for (const LeftWork& work : Recovery::left_in(Recovery::default_folder())) {
        const QString name = work.file.empty() ? tr("A project without a file") : shown(work.file.filename());
        notices_.tell(work.entry,
                      tr("%1 was not saved when the program ended on %2.")
                          .arg(name, QLocale().toString(work.kept, QLocale::ShortFormat)),
                      {{tr("Bring It Back"),
                        [this, work] {
                            if (!may_leave()) return offer_left_work();
                            session_.bring_back(work.document, work.file);
                            // Kept under this window's own name before the old one goes.
                            recovery_->keep_now();
                            Recovery::throw_away(work);
                        }},
                       {tr("Throw It Away"), [work] { Recovery::throw_away(work); }},
                       {tr("Ask Later"), {}}});
    }
}

void FileDesk::show_problem(const QString& title, const Problem& problem) {
    QMessageBox box(QMessageBox::Warning, title, title, QMessageBox::Ok, &window_);
    const QString file = QString::fromStdString(problem.file());
    box.setInformativeText(file.isEmpty() ? problem_text(problem)
                                          : tr("%1\n%2").arg(file, problem_text(problem)));
    box.exec();
}

bool FileDesk::open(const std::filesystem::path& path) {
    if (!may_leave()) return false;
    try {
        session_.open(path);
        Q_EMIT said(tr("Opened %1").arg(shown(path)));
        return true;
    } catch (const Problem& problem) {
        show_problem(tr("This project could not be opened"), problem);
        return false;
    }
}

bool FileDesk::start_new() {
    if (!may_leave()) return false;
    QFile file(QStringLiteral(":/demo/starter.ramp.json"));
    if (!file.open(QIODevice::ReadOnly)) return false;
    session_.start(parse_document(file.readAll().toStdString()));
    return true;
}

void FileDesk::choose_file() {
    const QString folder = session_.has_file() ? shown(session_.path().parent_path()) : QString();
    const QString name =
        QFileDialog::getOpenFileName(&window_, tr("Open a Project"), folder, project_file_filter());
    if (!name.isEmpty()) open(name.toStdString());
}

bool FileDesk::write(const std::filesystem::path& path) {
    try {
        session_.save(path);
        Q_EMIT said(tr("Saved %1").arg(shown(path)));
        return true;
    } catch (const Problem& problem) {
        show_problem(tr("The project was not saved"), problem);
        return false;
    }
}

bool FileDesk::save() {
    return session_.has_file() ? write(session_.path()) : save_as();
}

bool FileDesk::save_as() {
    QFileDialog dialog(&window_, tr("Save the Project As"), {}, project_file_filter());
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("ramp.json"));
    if (session_.has_file()) dialog.selectFile(shown(session_.path()));
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) return false;
    return write(dialog.selectedFiles().constFirst().toStdString());
}

bool FileDesk::may_leave() {
    if (!session_.has_unsaved_work()) return true;
    QMessageBox box(QMessageBox::Question, tr("Unsaved changes"), tr("Save the changes to this project?"),
                    QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, &window_);
    box.setObjectName(QStringLiteral("unsaved"));
    box.setInformativeText(tr("They are lost otherwise."));
    box.setDefaultButton(QMessageBox::Save);
    switch (box.exec()) {
    case QMessageBox::Save:
        return save();
    case QMessageBox::Discard:
        return true;
    default:
        return false;
    }
}

} // namespace rampwright::ui

#pragma once

#include "files/file_claim.hpp"
#include "files/file_watch.hpp"
#include "files/recovery.hpp"

#include <rampwright/core/problem.hpp>

#include <QObject>
#include <QString>

#include <filesystem>
#include <memory>
#include <optional>

class QMenu;
class QWidget;

namespace rampwright::ui {

class NoticeBar;
class RecentFiles;
class Session;

/// The kinds of file that a dialog about projects offers.
QString project_file_filter();

/// Everything that happens between the open project and its file: opening and saving with the questions
/// they need, the files used last, work kept aside, and what others do to the file.
class FileDesk : public QObject {
    Q_OBJECT

public:
    /// @param remember whether anything is kept from run to run: recent files, claims, unsaved work.
    FileDesk(Session& session, QWidget& window, NoticeBar& notices, bool remember);

    /// Fills the file menu's part that opens and saves.
    void fill_menu(QMenu& menu);

    /// Opens a file, after asking about unsaved work. Problems are shown to the person.
    bool open(const std::filesystem::path& path);
    /// An almost empty project, after asking about unsaved work.
    bool start_new();
    bool save();
    bool save_as();
    /// Asks Save, Discard or Cancel where there is unsaved work. @return whether to go on.
    bool may_leave();
    /// Offers what a program that crashed left behind.
    void offer_left_work();
    /// Tells the person in a dialog what is wrong with a file.
    void show_problem(const QString& title, const Problem& problem);

Q_SIGNALS:
    /// A line for the status bar.
    void said(const QString& text);

private:
    void choose_file();
    bool write(const std::filesystem::path& path);
    void take_up_file();
    void meet_other_change();
    void reload();

    Session& session_;
    QWidget& window_;
    NoticeBar& notices_;
    FileWatch watch_;
    std::optional<FileClaim> claim_;
    std::unique_ptr<Recovery> recovery_;
    RecentFiles* recent_ = nullptr;
    bool remember_;
};

} // namespace rampwright::ui

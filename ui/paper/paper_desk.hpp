#pragma once

#include "session/session.hpp"
#include "sheet/sheet.hpp"

#include <QObject>

namespace rampwright::ui {

/// The build sheet of the car in hand, made when somebody looks at it and again after every change.
class PaperDesk : public QObject {
    Q_OBJECT

public:
    /// @param session becomes the parent.
    explicit PaperDesk(Session& session);

    Session& session() { return session_; }
    /// The sheet as it is now; nullptr where the car cannot be computed, and `problem` then says why.
    const paper::Sheet* sheet();
    const QString& problem() const { return problem_; }

    paper::Paper chosen_paper() const { return paper_; }
    void set_paper(paper::Paper paper);
    /// What the 100 mm bar measures on this printer's paper, mm.
    double printed_bar() const { return bar_; }
    void set_printed_bar(double bar);
    QDate date() const { return date_; }
    void set_date(const QDate& date);

    /// A file's name to begin with: the car's, made safe.
    QString suggested_name() const;

    /// The sheet as a PDF at true size. @throws Problem, an old file untouched.
    void save_pdf(const QString& path);
    /// @param page from 0. @throws Problem.
    void save_picture(const QString& path, std::size_t page);

Q_SIGNALS:
    /// The sheet is another one.
    void changed();

private:
    void forget();
    const paper::Sheet& sheet_or_throw();

    Session& session_;
    paper::Paper paper_;
    double bar_ = paper::bar_length;
    QDate date_ = QDate::currentDate();
    std::optional<paper::Sheet> sheet_;
    bool made_ = false;
    QString problem_;
};

} // namespace rampwright::ui

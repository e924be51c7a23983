#include "paper/paper_desk.hpp"

#include "sheet/paint.hpp"
#include "text/figure_text.hpp"

#include <rampwright/project/document.hpp>

namespace rampwright::ui {
namespace {

constexpr double sent_dpi = 200;

} // namespace

PaperDesk::PaperDesk(Session& session)
    : QObject(&session),
      session_(session),
      paper_(session.project().units == UnitSystem::metric ? paper::Paper::a4 : paper::Paper::letter) {
    connect(&session_, &Session::changed, this, &PaperDesk::forget);
    connect(&session_, &Session::car_chosen, this, &PaperDesk::forget);
    connect(&session_, &Session::file_changed, this, &PaperDesk::forget);
}

void PaperDesk::forget() {
    made_ = false;
    Q_EMIT changed();
}

const paper::Sheet* PaperDesk::sheet() {
    if (made_) return sheet_ ? &*sheet_ : nullptr;
    made_ = true;
    sheet_.reset();
    problem_.clear();
    try {
        if (const Figures* figures = session_.figures()) {
            const QString file = session_.has_file()
                                     ? QString::fromStdString(session_.path().filename().string())
                                     : tr("a project not saved yet");
            sheet_ =
                paper::make_sheet({session_.project(), session_.car(), *figures, file, date_, paper_, bar_});
        } else if (const Problem* problem = session_.problem()) {
            problem_ = problem_text(*problem);
        }
    } catch (const Problem& problem) {
        problem_ = problem_text(problem);
    }
    return sheet_ ? &*sheet_ : nullptr;
}

void PaperDesk::set_paper(paper::Paper paper) {
    if (paper == paper_) return;
    paper_ = paper;
    forget();
}

void PaperDesk::set_printed_bar(double bar) {
    if (bar == bar_) return;
    bar_ = bar;
    forget();
}

void PaperDesk::set_date(const QDate& date) {
    if (date == date_) return;
    date_ = date;
    forget();
}

QString PaperDesk::suggested_name() const {
    QString name;
    for (const QChar each : QString::fromStdString(session_.plan().name))
        name += each.isLetterOrNumber() || each.isSurrogate() ? each : QLatin1Char('-');
    return name.isEmpty() ? QStringLiteral("car") : name;
}

const paper::Sheet& PaperDesk::sheet_or_throw() {
    if (const paper::Sheet* made = sheet()) return *made;
    throw Problem(Exit::could_not, "-", "there is no sheet: " + problem_.toStdString(),
                  "put that right first");
}

void PaperDesk::save_pdf(const QString& path) {
    write_file(path.toStdString(), paper::to_pdf(sheet_or_throw(), date_).toStdString());
}

void PaperDesk::save_picture(const QString& path, std::size_t page) {
    write_file(path.toStdString(), paper::to_png(sheet_or_throw(), page, sent_dpi).toStdString());
}

} // namespace rampwright::ui

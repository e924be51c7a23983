// Taking cars in from another project's file.
#include "files/file_desk.hpp"
#include "text/figure_text.hpp"
#include "window/main_window.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/project/take_in.hpp>

#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QStatusBar>
#include <QVBoxLayout>

namespace rampwright::ui {
namespace {

/// Asks which cars of a project are wanted; the first is marked to begin with.
std::vector<std::size_t> ask_which(QWidget& window, const Project& other, const QString& file) {
    QDialog dialog(&window);
    dialog.setObjectName(QStringLiteral("take.in"));
    dialog.setWindowTitle(MainWindow::tr("Take In Cars"));
    auto* column = new QVBoxLayout(&dialog);
    auto* label = new QLabel(MainWindow::tr("&Cars in %1").arg(file), &dialog);
    auto* list = new QListWidget(&dialog);
    list->setObjectName(QStringLiteral("take.in.cars"));
    list->setAccessibleName(MainWindow::tr("Cars in the file"));
    list->setSelectionMode(QAbstractItemView::ExtendedSelection);
    label->setBuddy(list);
    for (const CarPlan& car : other.cars)
        list->addItem(QString::fromStdString(car.name));
    auto* note =
        new QLabel(MainWindow::tr("They will race by this project's rules, lane and air. Their timed "
                                  "runs stay in their own file."),
                   &dialog);
    note->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, &dialog);
    auto* take = buttons->button(QDialogButtonBox::Ok);
    take->setText(MainWindow::tr("&Take In"));
    QObject::connect(list, &QListWidget::itemSelectionChanged, take,
                     [=] { take->setEnabled(!list->selectedItems().isEmpty()); });
    QObject::connect(list, &QListWidget::itemActivated, &dialog, &QDialog::accept);
    QObject::connect(buttons, &QDialogButtonBox::accepted, &dialog, &QDialog::accept);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    column->addWidget(label);
    column->addWidget(list);
    column->addWidget(note);
    column->addWidget(buttons);
    list->setCurrentRow(0);
    std::vector<std::size_t> chosen;
    if (dialog.exec() == QDialog::Accepted)
        for (int row = 0; row < list->count(); ++row)
            if (list->item(row)->isSelected()) chosen.push_back(static_cast<std::size_t>(row));
    return chosen;
}

/// What came in, and what of it is another here.
QString told_of(const TakenIn& taken) {
    QStringList names;
    for (const std::string& name : taken.names)
        names << QString::fromStdString(name);
    QStringList told{MainWindow::tr("Taken in: %1.").arg(names.join(QStringLiteral(", ")))};
    if (taken.other_rules) told << MainWindow::tr("This project's rules are others: look at the Agree step.");
    if (taken.other_lane) told << MainWindow::tr("Lane or air are others: times change.");
    if (taken.inputs_kept > 0)
        told << MainWindow::tr("%n value(s) of the old project's model went into the cars.", nullptr,
                               static_cast<int>(taken.inputs_kept));
    if (taken.runs_left > 0)
        told << MainWindow::tr("%n timed run(s) stay in the old file.", nullptr,
                               static_cast<int>(taken.runs_left));
    return told.join(QLatin1Char(' '));
}

} // namespace

void MainWindow::take_in_car() {
    const QString folder =
        session_.has_file() ? QString::fromStdString(session_.path().parent_path().string()) : QString();
    const QString file = QFileDialog::getOpenFileName(this, tr("Take In a Car from Another File"), folder,
                                                      project_file_filter());
    if (file.isEmpty()) return;
    try {
        const Document other = load_document(file.toStdString());
        const Project project = read_project(other);
        if (project.cars.empty())
            throw Problem(Exit::could_not, "/cars", Core::tr("the file has no car"),
                          Core::tr("choose another"));
        std::vector<std::size_t> cars{0};
        if (project.cars.size() > 1) cars = ask_which(*this, project, QFileInfo(file).fileName());
        if (cars.empty()) return;
        const TakenIn taken = take_in_cars(session_.document(), other, cars);
        const std::size_t first = session_.project().cars.size();
        session_.apply(taken.edit);
        session_.choose_car(first);
        statusBar()->showMessage(told_of(taken));
    } catch (const Problem& problem) {
        files_->show_problem(tr("No car was taken in"),
                             problem.file().empty() ? problem.in_file(file.toStdString()) : problem);
    }
}

} // namespace rampwright::ui

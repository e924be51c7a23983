#include "window/main_window.hpp"

#include "drawing/car_canvas.hpp"
#include "files/file_desk.hpp"
#include "files/template_export.hpp"
#include "panels/answers_panel.hpp"
#include "panels/energy_panel.hpp"
#include "panels/findings_panel.hpp"
#include "panels/notice_bar.hpp"
#include "panels/step_note.hpp"
#include "shaded/picture_corner.hpp"
#include "text/figure_text.hpp"
#include "window/language.hpp"

#include <QAbstractItemView>
#include <QAction>
#include <QActionGroup>
#include <QApplication>
#include <QClipboard>
#include <QCloseEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenuBar>
#include <QMimeData>
#include <QPlainTextEdit>
#include <QScopedValueRollback>
#include <QScrollArea>
#include <QSettings>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTabBar>
#include <QVBoxLayout>

namespace rampwright::ui {
namespace {

/// The right column, px: as usual, and at most where a language of long words needs more.
constexpr int right_column = 316, widest_right_column = 350;
constexpr int said_ms = 6000;

} // namespace

MainWindow::MainWindow(Session& session, bool keep_settings, QWidget* parent)
    : QMainWindow(parent), session_(session), keep_settings_(keep_settings) {
    setObjectName(QStringLiteral("workbench"));
    setAcceptDrops(true);
    build_middle();
    build_menus();
    connect(&session_, &Session::file_changed, this, &MainWindow::show_title);
    connect(&session_, &Session::changed, this, &MainWindow::show_cars);
    connect(&session_, &Session::car_chosen, this, &MainWindow::show_cars);
    connect(&session_.history(), &QUndoStack::cleanChanged, this,
            [this](bool clean) { setWindowModified(!clean); });
    // Tab goes on to the next control everywhere; within a list or a table the arrow keys go.
    for (auto* view : findChildren<QAbstractItemView*>())
        view->setTabKeyNavigation(false);
    for (auto* text : findChildren<QPlainTextEdit*>())
        text->setTabChangesFocus(true);
    show_title();
    show_cars();
    show_step(Step::load);
    resize(1360, 860);
    if (keep_settings_) {
        QSettings settings;
        restoreGeometry(settings.value(QStringLiteral("window/geometry")).toByteArray());
        slip_->setVisible(settings.value(QStringLiteral("window/slip"), true).toBool());
        drawer_wanted_ = settings.value(QStringLiteral("window/drawer"), true).toBool();
        drawer_->setVisible(drawer_wanted_);
    }
}

void MainWindow::build_middle() {
    auto* middle = new QWidget(this);
    auto* rows = new QVBoxLayout(middle);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);

    steps_ = new StepRuler(middle);
    rows->addWidget(steps_);

    cars_ = new QTabBar(middle);
    cars_->setObjectName(QStringLiteral("cars"));
    cars_->setAccessibleName(tr("Cars"));
    cars_->setDrawBase(false);
    cars_->setExpanding(false);
    canvas_ = new CarCanvas(session_, middle);
    corner_ = new PictureCorner(session_, *canvas_);
    drawer_ = new QWidget(middle);
    auto* drawer_row = new QHBoxLayout(drawer_);
    drawer_row->setContentsMargins(8, 0, 8, 8);
    auto* energy = new EnergyPanel(session_, drawer_);
    findings_ = new FindingsPanel(session_, drawer_);
    drawer_row->addWidget(energy, 3);
    drawer_row->addWidget(findings_, 2);
    drawer_->setFixedHeight(std::max(158, energy->sizeHint().height() + 8));

    auto* sheet = new QVBoxLayout;
    sheet->setContentsMargins(0, 6, 0, 0);
    sheet->setSpacing(0);
    auto* tab_row = new QHBoxLayout;
    tab_row->setContentsMargins(16, 0, 0, 0);
    tab_row->addWidget(cars_);
    tab_row->addStretch(1);
    views_ = new QTabBar(middle);
    views_->setObjectName(QStringLiteral("views"));
    views_->setAccessibleName(tr("Views of this step"));
    views_->setDrawBase(false);
    views_->setExpanding(false);
    tab_row->addWidget(views_);
    tab_row->addSpacing(16);
    sheet->addLayout(tab_row);
    notices_ = new NoticeBar(middle);
    sheet->addWidget(notices_);
    files_ = new FileDesk(session_, *this, *notices_, keep_settings_);
    connect(files_, &FileDesk::said, this,
            [this](const QString& text) { statusBar()->showMessage(text, said_ms); });
    sheets_ = new QStackedWidget(middle);
    sheets_->addWidget(canvas_);
    // The step with most on its sheet does not decide how small the window may be.
    sheets_->setMinimumSize(360, 240);
    sheet->addWidget(sheets_, 1);
    sheet->addWidget(drawer_);

    auto* answers = new AnswersPanel(session_, middle);
    slip_ = new QFrame(middle);
    slip_->setObjectName(QStringLiteral("slip"));
    slip_->setAutoFillBackground(true);
    slip_->setBackgroundRole(QPalette::Base);
    static_cast<QFrame*>(slip_)->setFrameShape(QFrame::StyledPanel);
    auto* slip_column = new QVBoxLayout(slip_);
    slip_column->setContentsMargins(14, 10, 6, 8);
    slip_title_ = new QLabel(slip_);
    slip_title_->setWordWrap(true);
    slips_ = new QStackedWidget(slip_);
    slip_column->addWidget(slip_title_);
    slip_column->addWidget(slips_, 1);

    auto* right = new QVBoxLayout;
    right->setContentsMargins(8, 8, 8, 8);
    right->setSpacing(8);
    right->addWidget(answers);
    right->addWidget(slip_, 1);
    right->addStretch(0);

    columns_ = new QHBoxLayout;
    columns_->setSpacing(0);
    columns_->addLayout(sheet, 1);
    columns_->addLayout(right);
    rows->addLayout(columns_, 1);
    setCentralWidget(middle);

    pages_ = make_step_pages(session_, *canvas_);
    for (const StepPage& page : pages_) {
        auto* scroll = new QScrollArea(slips_);
        scroll->setWidgetResizable(true);
        scroll->setFrameShape(QFrame::NoFrame);
        scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        scroll->setFocusPolicy(Qt::NoFocus);
        scroll->setWidget(page.slip);
        page.slip->setBackgroundRole(QPalette::Base);
        slips_->addWidget(scroll);
        if (page.sheet) sheets_->addWidget(page.sheet);
        for (const StepView& view : page.views)
            sheets_->addWidget(view.widget);
        steps_->add(page.step, page.name, page.why);
    }
    int needed = right_column;
    for (const StepPage& page : pages_)
        needed = std::max(needed, page.slip->minimumSizeHint().width() + 36); // frame, margins, scroll bar
    for (QWidget* each : {static_cast<QWidget*>(answers), slip_})
        each->setFixedWidth(std::min(needed, widest_right_column));
    mark_decided_steps(*steps_, session_);
    connect(steps_, &StepRuler::chosen, this, &MainWindow::show_step);
    connect(views_, &QTabBar::currentChanged, this, &MainWindow::show_view);
    connect(canvas_, &CarCanvas::place_shown, this, [this] {
        if (views_->count() > 0) views_->setCurrentIndex(0);
        canvas_->setFocus();
    });
    connect(cars_, &QTabBar::currentChanged, this, [this](int car) {
        if (car >= 0) session_.choose_car(static_cast<std::size_t>(car));
    });
    connect(canvas_, &CarCanvas::finding_selected, findings_, &FindingsPanel::select);
    connect(findings_, &FindingsPanel::selected, canvas_, &CarCanvas::select_finding);
    connect(answers, &AnswersPanel::finding_chosen, canvas_,
            [this](std::size_t finding) { canvas_->select_finding(finding); });
    connect(canvas_, &CarCanvas::hint, this, [this](const QString& text) { statusBar()->showMessage(text); });
    statusBar()->setSizeGripEnabled(false);
}

void MainWindow::build_menus() {
    QMenu* file = menuBar()->addMenu(tr("&File"));
    files_->fill_menu(*file);
    file->addSeparator();
    file->addAction(tr("Export &Templates…"), QKeySequence(Qt::CTRL | Qt::Key_E), this, [this] {
        const QString said = export_templates(*this, session_);
        if (!said.isEmpty()) statusBar()->showMessage(said, said_ms);
    });
    file->addSeparator();
    file->addAction(tr("&Quit"), QKeySequence(Qt::CTRL | Qt::Key_Q), this, [this] { close(); });

    QMenu* edit = menuBar()->addMenu(tr("&Edit"));
    QAction* undo = session_.history().createUndoAction(this, tr("&Undo"));
    undo->setShortcut(QKeySequence::Undo);
    QAction* redo = session_.history().createRedoAction(this, tr("&Redo"));
    redo->setShortcuts({QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    edit->addAction(undo);
    edit->addAction(redo);
    build_history_menu(edit);
    edit->addSeparator();
    add_drawing_actions(edit);
    edit->addSeparator();
    add_trace_actions(edit);
    edit->addSeparator();
    edit->addAction(tr("Copy All &Figures"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C), this,
                    [this] { copy_figures(); });

    build_car_menu();
    QMenu* view = menuBar()->addMenu(tr("&View"));
    const auto zoom = [this](double factor) { canvas_->zoom_by(factor, QRectF(canvas_->rect()).center()); };
    view->addAction(tr("Zoom &In"), QKeySequence(QKeySequence::ZoomIn), this, [zoom] { zoom(1.25); });
    view->addAction(tr("Zoom &Out"), QKeySequence(QKeySequence::ZoomOut), this, [zoom] { zoom(0.8); });
    view->addAction(tr("Zoom to &Fit"), QKeySequence(Qt::CTRL | Qt::Key_0), this,
                    [this] { canvas_->zoom_to_fit(); });
    view->addAction(tr("The &Whole Car…"), QKeySequence(Qt::CTRL | Qt::Key_T), this,
                    [this] { corner_->enlarge(); });
    view->addSeparator();
    const auto fold = [&](const QString& text, Qt::Key key, QWidget* what) {
        QAction* action = view->addAction(text, QKeySequence(key), this, [this, what](bool on) {
            what->setVisible(on);
            if (what == drawer_) drawer_wanted_ = on;
        });
        action->setCheckable(true);
        connect(view, &QMenu::aboutToShow, action, [action, what] { action->setChecked(what->isVisible()); });
        action->setChecked(true);
    };
    QMenu* steps = view->addMenu(tr("S&tep"));
    for (std::size_t i = 0; i < pages_.size(); ++i)
        steps->addAction(pages_[i].name, QKeySequence(Qt::CTRL | Qt::Key(Qt::Key_1 + static_cast<int>(i))),
                         this, [this, step = pages_[i].step] { show_step(step); });
    fold(tr("&Slip of the Step"), Qt::Key_F8, slip_);
    fold(tr("&Energy and Findings"), Qt::Key_F9, drawer_);
    // For a left hand, which would cover them on the right.
    QAction* left = view->addAction(tr("Answers on the &Left"), this, [this](bool on) {
        columns_->setDirection(on ? QBoxLayout::RightToLeft : QBoxLayout::LeftToRight);
        if (keep_settings_) QSettings().setValue(QStringLiteral("window/answers_left"), on);
    });
    left->setCheckable(true);
    if (keep_settings_ && QSettings().value(QStringLiteral("window/answers_left"), false).toBool())
        left->trigger();
    view->addSeparator();
    auto* units = new QActionGroup(this);
    for (const auto& [text, system] : {std::pair{tr("&Millimetres and Grams"), UnitSystem::metric},
                                       {tr("Inches and O&unces"), UnitSystem::inch_ounce}}) {
        QAction* action = view->addAction(text, this, [this, s = system] {
            attempt([&] { return rampwright::set_units(session_.document(), s); });
        });
        action->setCheckable(true);
        units->addAction(action);
        const auto check = [this, action, s = system] { action->setChecked(session_.project().units == s); };
        connect(&session_, &Session::changed, action, check);
        check();
    }
    view->addSeparator();
    auto* looks = new QActionGroup(this);
    for (const auto& [text, appearance] :
         {std::pair{tr("Li&ght"), Appearance::light}, {tr("&Dark"), Appearance::dark}}) {
        QAction* action = view->addAction(text, this, [this, a = appearance] { set_appearance(a); });
        action->setCheckable(true);
        action->setChecked(theme().appearance == appearance);
        looks->addAction(action);
    }
    add_language_menu(*view, keep_settings_,
                      [this](const QString& said) { statusBar()->showMessage(said, said_ms); });
    build_help_menu();
}

void MainWindow::show_step(Step step) {
    const auto page = std::find_if(pages_.begin(), pages_.end(),
                                   [step](const StepPage& candidate) { return candidate.step == step; });
    if (page == pages_.end()) return;
    slips_->setCurrentIndex(static_cast<int>(page - pages_.begin()));
    slip_title_->setText(page->why);
    {
        const QSignalBlocker blocker(views_);
        while (views_->count() > 0)
            views_->removeTab(0);
        if (!page->views.empty()) views_->addTab(tr("Drawing"));
        for (const StepView& view : page->views)
            views_->addTab(view.name);
    }
    step_ = step;
    show_view(0);
    drawer_->setVisible(drawer_wanted_ && page->drawer);
    steps_->choose(step);
    switch (step) {
    case Step::shape:
        canvas_->set_reach(Reach::wood);
        break;
    case Step::roll:
        canvas_->set_reach(Reach::wheels);
        break;
    case Step::load:
        canvas_->set_reach(Reach::weight);
        break;
    default:
        canvas_->set_reach(Reach::nothing);
        break;
    }
}

void MainWindow::show_view(int view) {
    for (const StepPage& page : pages_) {
        if (page.step != step_) continue;
        QWidget* main_sheet = page.sheet ? page.sheet : canvas_;
        sheets_->setCurrentWidget(view > 0 ? page.views.at(static_cast<std::size_t>(view - 1)).widget
                                           : main_sheet);
    }
}

void MainWindow::show_title() {
    const QString title = QString::fromStdString(session_.project().title);
    const QString file = session_.has_file() ? QString::fromStdString(session_.path().filename().string())
                                             : tr("not saved yet");
    setWindowTitle(tr("%1 (%2)[*] – Rampwright").arg(title.isEmpty() ? tr("Project") : title, file));
    setWindowModified(session_.has_unsaved_work());
}

void MainWindow::show_cars() {
    const QSignalBlocker blocker(cars_);
    const auto& cars = session_.project().cars;
    while (cars_->count() > static_cast<int>(cars.size()))
        cars_->removeTab(cars_->count() - 1);
    for (std::size_t i = 0; i < cars.size(); ++i) {
        const QString name = QString::fromStdString(cars[i].name);
        if (static_cast<int>(i) == cars_->count())
            cars_->addTab(name);
        else if (cars_->tabText(static_cast<int>(i)) != name)
            cars_->setTabText(static_cast<int>(i), name);
    }
    cars_->setCurrentIndex(static_cast<int>(session_.car()));
}

void MainWindow::set_appearance(Appearance appearance) {
    apply_theme(appearance);
    if (keep_settings_) QSettings().setValue(QStringLiteral("window/dark"), appearance == Appearance::dark);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!files_->may_leave()) {
        event->ignore();
        return;
    }
    if (keep_settings_) {
        QSettings settings;
        settings.setValue(QStringLiteral("window/geometry"), saveGeometry());
        settings.setValue(QStringLiteral("window/slip"), slip_->isVisible());
        settings.setValue(QStringLiteral("window/drawer"), drawer_wanted_);
    }
    event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    const auto urls = event->mimeData()->urls();
    if (urls.size() == 1 && urls.front().isLocalFile()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    const auto urls = event->mimeData()->urls();
    if (urls.size() != 1 || !urls.front().isLocalFile()) return;
    event->acceptProposedAction();
    const QString path = urls.front().toLocalFile();
    if (!take_dropped_picture(path, event->position().toPoint())) files_->open(path.toStdString());
}

void MainWindow::copy_figures() {
    const Figures* figures = session_.figures();
    if (!figures) return;
    QString text;
    for (const TableRow& row : table_rows(*figures, session_.project().units))
        text += QString::fromStdString(row.label) + QLatin1Char('\t') + QString::fromStdString(row.value) +
                QLatin1Char('\n');
    QApplication::clipboard()->setText(text);
    statusBar()->showMessage(tr("Copied: a table for a message or a spreadsheet."), said_ms);
}

} // namespace rampwright::ui

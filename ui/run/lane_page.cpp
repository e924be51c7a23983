#include "run/lane_page.hpp"

#include "fields/quiet_combo_box.hpp"
#include "fields/value_editor.hpp"
#include "look/theme.hpp"
#include "run/lane_view.hpp"
#include "run/piece_table.hpp"
#include "text/figure_text.hpp"
#include "text/said.hpp"
#include "window/help_window.hpp"

#include <rampwright/project/track_library.hpp>
#include <rampwright/results/in_units.hpp>
#include <rampwright/units/format.hpp>

#include <QButtonGroup>
#include <QCheckBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace rampwright::ui {
namespace {

constexpr int lane_side_width = 330;

QString lane_file_types() {
    return LanePage::tr("Projects and lanes (*.json);;All files (*)");
}

QString points_text(const std::vector<Vec2>& points, UnitSystem units) {
    QString text;
    const auto number = [units](double si) {
        return QString::fromStdString(format(si, Quantity::length, units,
                                             {.decimals = units == UnitSystem::metric ? 1 : 3,
                                              .with_unit = false,
                                              .trim = true,
                                              .ascii = true}));
    };
    for (const Vec2& point : points)
        text += number(point.x()) + QLatin1Char('\t') + number(point.y()) + QLatin1Char('\n');
    return text;
}

} // namespace

LanePage::LanePage(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), view_(new LaneView(session, this)) {
    setObjectName(QStringLiteral("lane-page"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 0, 8, 4);
    column->setSpacing(6);
    column->addWidget(view_, 2);
    state_ = new QLabel(this);
    state_->setObjectName(QStringLiteral("lane.state"));
    state_->setForegroundRole(QPalette::PlaceholderText);
    state_->setWordWrap(true);
    column->addWidget(state_);

    auto* row = new QHBoxLayout;
    row->setSpacing(20);
    auto* left = new QVBoxLayout;
    auto* switches = new QHBoxLayout;
    by_pieces_ = new QPushButton(tr("By &Pieces"), this);
    by_points_ = new QPushButton(tr("Measured P&oints"), this);
    auto* group = new QButtonGroup(this);
    for (QPushButton* each : {by_pieces_, by_points_}) {
        each->setCheckable(true);
        group->addButton(each);
        switches->addWidget(each);
    }
    by_pieces_->setObjectName(QStringLiteral("lane.by-pieces"));
    by_points_->setObjectName(QStringLiteral("lane.by-points"));
    switches->addStretch(1);
    left->addLayout(switches);
    shape_ = new QStackedWidget(this);
    shape_->addWidget(make_pieces());
    shape_->addWidget(make_points());
    left->addWidget(shape_, 1);
    row->addLayout(left, 1);
    row->addWidget(make_side());
    column->addLayout(row, 3);
    problem_ = new QLabel(this);
    problem_->setObjectName(QStringLiteral("lane.problem"));
    problem_->setWordWrap(true);
    problem_->hide();
    column->addWidget(problem_);

    connect(by_pieces_, &QPushButton::clicked, this, [this] { shape_->setCurrentIndex(0); });
    connect(by_points_, &QPushButton::clicked, this, [this] { shape_->setCurrentIndex(1); });
    connect(view_, &LaneView::chosen, pieces_,
            [this](std::size_t piece) { pieces_->setCurrentCell(static_cast<int>(piece), 1); });
    connect(pieces_, &QTableWidget::currentCellChanged, view_, [this](int now) {
        view_->choose(now < 0 ? std::nullopt : std::optional(static_cast<std::size_t>(now)));
    });
    connect(pieces_, &PieceTable::refused, this, [this](const QString& why) {
        refused_ = why;
        tell();
    });
    connect(view_, &LaneView::redrawn, this, &LanePage::refresh);
    connect(&session_, &Session::car_chosen, this, &LanePage::refresh);
    shape_->setCurrentIndex(session_.project().track.measured.empty() ? 0 : 1);
    refresh();
}

QWidget* LanePage::make_pieces() {
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    pieces_ = new PieceTable(session_, page);
    pieces_->setMinimumHeight(90);
    column->addWidget(pieces_, 1);
    auto* buttons = new QHBoxLayout;
    const auto add = [&](const char* name, const QString& text, const QString& why, auto slot) {
        auto* button = new QPushButton(text, page);
        button->setObjectName(QLatin1String(name));
        button->setToolTip(why);
        button->setWhatsThis(why);
        connect(button, &QPushButton::clicked, this, slot);
        buttons->addWidget(button);
    };
    add("lane.add-straight", tr("Add S&traight"), tr("Behind the chosen piece, or at the end."),
        [this] { pieces_->add_straight(); });
    add("lane.add-bend", tr("Add &Bend"), tr("Behind the chosen piece, or at the end."),
        [this] { pieces_->add_arc(); });
    add("lane.remove", tr("Re&move"), tr("Takes the chosen piece out."),
        [this] { pieces_->remove_chosen(); });
    buttons->addStretch(1);
    column->addLayout(buttons);
    return page;
}

QWidget* LanePage::make_points() {
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    points_ = new QPlainTextEdit(page);
    points_->setObjectName(QStringLiteral("lane.points"));
    points_->setAccessibleName(tr("Measured points: X and Z, one point a line"));
    points_->setPlaceholderText(
        tr("X and Z of the surface, one point a line, from the start-gate end:\n0  1240\n250  "
           "1134\n500  1029\n…"));
    points_->setTabChangesFocus(true);
    points_->setMinimumHeight(70);
    column->addWidget(points_, 1);
    residual_ = new QLabel(page);
    residual_->setObjectName(QStringLiteral("lane.residual"));
    residual_->setWordWrap(true);
    column->addWidget(residual_);
    auto* buttons = new QHBoxLayout;
    auto* use = new QPushButton(tr("&Use These Points"), page);
    use->setObjectName(QStringLiteral("lane.use-points"));
    auto* how = new QPushButton(tr("&How to Measure"), page);
    how->setObjectName(QStringLiteral("lane.how"));
    connect(use, &QPushButton::clicked, this, &LanePage::take_points);
    connect(how, &QPushButton::clicked, this,
            [] { HelpWindow::show_page(QStringLiteral("measure-a-lane")); });
    buttons->addWidget(use);
    buttons->addWidget(how);
    buttons->addStretch(1);
    column->addLayout(buttons);
    return page;
}

QWidget* LanePage::make_side() {
    auto* side = new QWidget(this);
    side->setFixedWidth(lane_side_width);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    auto* choose = new QHBoxLayout;
    library_ = new QuietComboBox(side);
    library_->setObjectName(QStringLiteral("lane.library"));
    library_->setAccessibleName(tr("Lanes to choose from"));
    library_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    for (const LibraryTrack& lane : track_library()) {
        library_->addItem(said(lane.title));
        library_->setItemData(library_->count() - 1, said(lane.notes), Qt::ToolTipRole);
    }
    auto* put = new QPushButton(tr("Put &In"), side);
    put->setObjectName(QStringLiteral("lane.put-in"));
    put->setToolTip(tr("Takes the place of this project's lane; Ctrl+Z brings the old one back."));
    choose->addWidget(library_, 1);
    choose->addWidget(put);
    column->addLayout(choose);
    auto* files = new QHBoxLayout;
    auto* load = new QPushButton(tr("From a Fi&le…"), side);
    auto* save = new QPushButton(tr("Save This Lan&e…"), side);
    files->addWidget(load);
    files->addWidget(save);
    column->addLayout(files);
    connect(put, &QPushButton::clicked, this, [this] {
        const auto& lanes = track_library();
        const std::size_t n = static_cast<std::size_t>(library_->currentIndex());
        if (n >= lanes.size()) return;
        attempt([&] { return set_track(session_.document(), lanes[n].track); });
        shape_->setCurrentIndex(0);
    });
    connect(load, &QPushButton::clicked, this, &LanePage::load_file);
    connect(save, &QPushButton::clicked, this, &LanePage::save_file);

    auto* form = new QFormLayout;
    form->setVerticalSpacing(4);
    form->setLabelAlignment(Qt::AlignLeft);
    const auto field = [&](QFormLayout* to, QWidget* parent, const QString& label, const char* pointer,
                           const QString& why) {
        auto* editor = new ValueEditor(session_, parent);
        editor->field()->setObjectName(QStringLiteral("lane.") + QLatin1String(pointer));
        editor->field()->setAccessibleName(tr("Lane, %1").arg(label));
        editor->field()->bind(pointer, tr("lane: %1").arg(label));
        editor->setToolTip(why);
        editor->setWhatsThis(why);
        to->addRow(label, editor);
    };
    field(form, side, tr("First slope"), "/track/first_slope_deg",
          tr("Of the surface at the start-gate end; negative downhill."));
    field(form, side, tr("Start line"), "/track/start_line_mm",
          tr("Where the nose waits, along the surface from the start-gate end."));
    field(form, side, tr("Finish line"), "/track/finish_line_mm",
          tr("Where the clock stops, along the surface from the start-gate end."));
    column->addLayout(form);

    guess_ = new QCheckBox(tr("Nobody has measured this lane &yet"), side);
    guess_->setObjectName(QStringLiteral("lane.guess"));
    guess_->setWhatsThis(
        tr("The shape is then a guess: fall and way are known only so well, and the time says so."));
    column->addWidget(guess_);
    sigmas_ = new QWidget(side);
    auto* doubts = new QFormLayout(sigmas_);
    doubts->setContentsMargins(18, 0, 0, 0);
    doubts->setVerticalSpacing(4);
    field(doubts, sigmas_, tr("Fall known to ±"), "/track/drop_sigma_mm",
          tr("One sigma of the height of the start line above the finish line."));
    field(doubts, sigmas_, tr("Way known to ±"), "/track/way_sigma_mm",
          tr("One sigma of the way from the start line to the finish line."));
    column->addWidget(sigmas_);
    unknown_ = new QLabel(side);
    unknown_->setObjectName(QStringLiteral("lane.unknown"));
    unknown_->setWordWrap(true);
    column->addWidget(unknown_);
    column->addStretch(1);
    connect(guess_, &QCheckBox::clicked, this, [this](bool on) {
        attempt([&] {
            return set_value(session_.document(), "/track/known", on ? Json("unknown") : Json(nullptr),
                             (on ? tr("Lane not measured yet") : tr("Lane measured")).toStdString());
        });
    });
    return side;
}

void LanePage::attempt(const std::function<Edit()>& edit) {
    try {
        session_.apply(edit());
        refused_.clear();
    } catch (const Problem& problem) {
        refused_ = problem_text(problem);
    }
    refresh();
}

void LanePage::refresh() {
    const TrackPlan& plan = session_.project().track;
    const UnitSystem units = session_.project().units;
    const bool measured = !plan.measured.empty();
    by_pieces_->setChecked(shape_->currentIndex() == 0);
    by_points_->setChecked(shape_->currentIndex() == 1);
    pieces_->setEnabled(!measured);
    if (measured && !points_->hasFocus()) points_->setPlainText(points_text(plan.measured, units));
    if (!measured) {
        residual_->setText(tr("Paste or type points, then use them instead of the pieces."));
    } else if (const Track* track = view_->track()) {
        residual_->setText(
            tr("%n point(s); they lie within %1 of the curve, %2 in the mean (root of squares).", nullptr,
               static_cast<int>(plan.measured.size()))
                .arg(QString::fromStdString(
                         format(track->fit_max(), Quantity::length, units, {.decimals = 2})),
                     QString::fromStdString(
                         format(track->fit_rms(), Quantity::length, units, {.decimals = 2}))));
    }
    const bool guess = plan.known == LaneKnown::unknown;
    guess_->setChecked(guess);
    guess_->setEnabled(!measured);
    sigmas_->setVisible(guess);
    const Figures* figures = session_.figures();
    unknown_->clear();
    if (guess && figures)
        for (const Finding& finding : figures->findings)
            if (finding.code == "lane-unknown")
                unknown_->setText(QString::fromStdString(text_of(finding, units)));
    unknown_->setVisible(!unknown_->text().isEmpty());
    tell();
}

void LanePage::tell() {
    const UnitSystem units = session_.project().units;
    if (const Track* track = view_->track())
        state_->setText(
            tr("%1. From start line to finish line %2; the start line is %3 above the lowest point; first "
               "slope %4.")
                .arg(QString::fromStdString(session_.project().track.title.empty()
                                                ? tr("This lane").toStdString()
                                                : session_.project().track.title),
                     quantity_text(track->finish_line() - track->start_line(), Quantity::length, units),
                     quantity_text(track->start_height(), Quantity::length, units),
                     quantity_text(track->slope(0), Quantity::angle, units)));
    else
        state_->setText(view_->problem());
    problem_->setText(refused_.isEmpty() ? QString() : not_taken(refused_));
    problem_->setVisible(!refused_.isEmpty());
}

void LanePage::take_points() {
    attempt([&] {
        return set_track_points(session_.document(),
                                read_points(points_->toPlainText(), session_.project().units));
    });
}

void LanePage::load_file() {
    const QString path = QFileDialog::getOpenFileName(this, tr("A Lane from a File"), {}, lane_file_types());
    if (path.isEmpty()) return;
    attempt([&] { return set_track(session_.document(), load_track(path.toStdString())); });
    shape_->setCurrentIndex(session_.project().track.measured.empty() ? 0 : 1);
    refresh();
}

void LanePage::save_file() {
    const QString path = QFileDialog::getSaveFileName(this, tr("Save This Lane"), QStringLiteral("lane.json"),
                                                      lane_file_types());
    if (path.isEmpty()) return;
    try {
        write_file(path.toStdString(), to_text(track_file(session_.document().root.at("track"))));
        refused_.clear();
    } catch (const Problem& problem) {
        refused_ = problem_text(problem);
    }
    tell();
}

} // namespace rampwright::ui

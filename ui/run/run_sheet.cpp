#include "run/run_sheet.hpp"

#include "run/curves_page.hpp"
#include "run/lane_page.hpp"
#include "run/spread_panel.hpp"
#include "run/steps_page.hpp"
#include "run/versus_panel.hpp"

#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>

namespace rampwright::ui {

RunSheet::RunSheet(Session& session, QWidget* parent)
    : QFrame(parent), tabs_(new QTabBar(this)), pages_(new QStackedWidget(this)) {
    setObjectName(QStringLiteral("run-sheet"));
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    setFrameShape(QFrame::StyledPanel);
    tabs_->setObjectName(QStringLiteral("run-sheet.tabs"));
    tabs_->setAccessibleName(tr("Pages of the Run step"));
    tabs_->setDrawBase(false);
    tabs_->setExpanding(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 8, 6);
    column->setSpacing(6);
    column->addWidget(tabs_);
    column->addWidget(pages_, 1);
    connect(tabs_, &QTabBar::currentChanged, pages_, &QStackedWidget::setCurrentIndex);
    add_page(tr("Along the Lane"), tr("Speed, loads and losses of one heat, place by place."),
             new CurvesPage(session));
    add_page(tr("What Pays"), tr("What you can still do, and what it brings."), new StepsPage(session));
    add_page(tr("The Lane"), tr("The lane's shape, its lines, and how well it is known."),
             new LanePage(session));
    add_page(tr("How Sure"), tr("Where heats would fall, and what the spread comes from."),
             new SpreadPanel(session, this));
    add_page(tr("Two Cars, One Clock"), tr("Two cars of the project under the same draws."),
             new VersusPanel(session, this));
}

void RunSheet::add_page(const QString& name, const QString& why, QWidget* page) {
    pages_->addWidget(page);
    const int tab = tabs_->addTab(name);
    tabs_->setTabToolTip(tab, why);
    tabs_->setTabWhatsThis(tab, why);
}

void RunSheet::show_page(int page) {
    tabs_->setCurrentIndex(page);
}

} // namespace rampwright::ui

#include "run/run_sheet.hpp"

#include "run/spread_panel.hpp"
#include "run/versus_panel.hpp"

namespace rampwright::ui {

RunSheet::RunSheet(Session& session, QWidget* parent) : QTabWidget(parent) {
    setObjectName(QStringLiteral("run.sheet"));
    setAccessibleName(tr("The heat"));
    setDocumentMode(true);
    addTab(new SpreadPanel(session, this), tr("&How Sure"));
    addTab(new VersusPanel(session, this), tr("&Two Cars, One Clock"));
}

} // namespace rampwright::ui

#include "window/step_pages.hpp"

#include "aim/cant_view.hpp"
#include "aim/steer_curves_view.hpp"
#include "aim/tuning_view.hpp"
#include "panels/agree_slip.hpp"
#include "panels/inspection_view.hpp"
#include "panels/load_slip.hpp"
#include "panels/shape_slip.hpp"
#include "panels/step_note.hpp"
#include "panels/value_slip.hpp"
#include "panels/weigh_slip.hpp"
#include "paper/paper_desk.hpp"
#include "paper/paper_slip.hpp"
#include "paper/paper_view.hpp"
#include "roll/axle_bench_view.hpp"
#include "roll/pendulum_view.hpp"
#include "roll/spin_down_view.hpp"
#include "roll/wheel_bench_view.hpp"
#include "roll/wheel_plot_view.hpp"
#include "run/run_sheet.hpp"

#include <QCoreApplication>
#include <QVBoxLayout>

#include <initializer_list>
#include <utility>

namespace rampwright::ui {
namespace {

struct PageText {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::StepPages)
};

QWidget* in_a_column(std::initializer_list<QWidget*> parts) {
    auto* whole = new QWidget;
    auto* column = new QVBoxLayout(whole);
    column->setContentsMargins(0, 0, 0, 0);
    for (QWidget* part : parts)
        column->addWidget(part);
    column->addStretch(1);
    return whole;
}

} // namespace

std::vector<StepPage> make_step_pages(Session& session, CarCanvas& drawing) {
    auto* desk = new PaperDesk(session); // the session's
    auto* pages = new PaperView(*desk);
    const auto page = [&session](Step step, const QString& why, QWidget* slip) {
        auto* noted = in_a_column({new StepNote(session, step), slip});
        return StepPage{step, step_name(step), why, noted, nullptr, true, {}};
    };
    StepPage agree =
        page(Step::agree, PageText::tr("What the race allows, and how it weighs."), new AgreeSlip(session));
    agree.views = {{PageText::tr("Inspection List"), new InspectionView(session, drawing)}};
    StepPage roll =
        page(Step::roll, PageText::tr("Wheels and axles."), new ValueSlip(session, roll_fields()));
    roll.views = {{PageText::tr("Wheel Bench"), new WheelBenchView(session)},
                  {PageText::tr("Wheels Drawn"), new WheelPlotView(session)},
                  {PageText::tr("Axle Bench"), new AxleBenchView(session)},
                  {PageText::tr("Pendulum"), new PendulumView(session)},
                  {PageText::tr("Spin-Down"), new SpinDownView(session)}};
    StepPage aim =
        page(Step::aim, PageText::tr("Where each wheel points."), new ValueSlip(session, aim_fields()));
    aim.views = {{PageText::tr("Drift Board"), new TuningView(session)},
                 {PageText::tr("Steer and Time"), new SteerCurvesView(session)},
                 {PageText::tr("Cant"), new CantView(session)}};
    StepPage run =
        page(Step::run, PageText::tr("The lane and the air."), new ValueSlip(session, run_fields()));
    run.sheet = new RunSheet(session);
    run.drawer = false;
    StepPage paper =
        page(Step::paper, PageText::tr("The build sheet: to print at true size, cut, measure and tick off."),
             in_a_column({new PaperSlip(*desk, *pages), new WeighSlip(session)}));
    paper.sheet = pages;
    paper.drawer = false;
    return {std::move(agree),
            page(Step::shape, PageText::tr("The wood: what it weighs and how it is cut."),
                 new ShapeSlip(session, drawing)),
            std::move(roll),
            page(Step::load, PageText::tr("Where the weight goes. Drag a piece on the drawing, or type."),
                 new LoadSlip(session, drawing)),
            std::move(aim),
            std::move(run),
            std::move(paper)};
}

std::optional<Step> step_named(std::string_view name) {
    for (const Step step : all_job_steps)
        if (to_string(step) == name) return step;
    return std::nullopt;
}

} // namespace rampwright::ui

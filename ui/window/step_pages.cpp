#include "window/step_pages.hpp"

#include "panels/agree_slip.hpp"
#include "panels/load_slip.hpp"
#include "panels/shape_slip.hpp"
#include "panels/value_slip.hpp"
#include "panels/weigh_slip.hpp"
#include "run/run_sheet.hpp"
#include "paper/paper_desk.hpp"
#include "paper/paper_slip.hpp"
#include "paper/paper_view.hpp"

#include <QCoreApplication>
#include <QVBoxLayout>

#include <array>
#include <initializer_list>
#include <utility>

namespace rampwright::ui {
namespace {

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
    const auto tr = [](const char* text) {
        return QCoreApplication::translate("rampwright::ui::StepPages", text);
    };
    auto* desk = new PaperDesk(session); // the session's
    auto* pages = new PaperView(*desk);
    return {
        {Step::agree, tr("Agree"), tr("What the race allows, and how it weighs."), new AgreeSlip(session)},
        {Step::shape, tr("Shape"), tr("The wood: what it weighs and how it is cut."),
         new ShapeSlip(session, drawing)},
        {Step::roll, tr("Roll"), tr("Wheels and axles."), new ValueSlip(session, roll_fields())},
        {Step::load, tr("Load"), tr("Where the weight goes. Drag a piece on the drawing, or type."),
         new LoadSlip(session, drawing)},
        {Step::aim, tr("Aim"), tr("Where each wheel points."), new ValueSlip(session, aim_fields())},
        {Step::run, tr("Run"), tr("The lane and the air."), new ValueSlip(session, run_fields()),
         new RunSheet(session), false},
        {Step::paper, tr("Paper"), tr("The build sheet: to print at true size, cut, measure and tick off."),
         in_a_column({new PaperSlip(*desk, *pages), new WeighSlip(session)}), pages, false},
    };
}

std::optional<Step> step_named(std::string_view name) {
    static constexpr std::array<std::pair<std::string_view, Step>, 7> names{{
        {"agree", Step::agree},
        {"shape", Step::shape},
        {"roll", Step::roll},
        {"load", Step::load},
        {"aim", Step::aim},
        {"run", Step::run},
        {"paper", Step::paper},
    }};
    for (const auto& [word, step] : names)
        if (word == name) return step;
    return std::nullopt;
}

} // namespace rampwright::ui

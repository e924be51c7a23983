#include "window/step_pages.hpp"

#include "aim/cant_view.hpp"
#include "aim/steer_curves_view.hpp"
#include "aim/tuning_view.hpp"
#include "panels/load_slip.hpp"
#include "panels/value_slip.hpp"
#include "roll/wheel_bench_view.hpp"

#include <QCoreApplication>

#include <array>
#include <utility>

namespace rampwright::ui {

std::vector<StepPage> make_step_pages(Session& session, LoadSlip& load) {
    const auto tr = [](const char* text) {
        return QCoreApplication::translate("rampwright::ui::StepPages", text);
    };
    return {
        {Step::agree, tr("Agree"), tr("What the race allows, and how it weighs."),
         new ValueSlip(session, agree_fields())},
        {Step::shape, tr("Shape"), tr("The wood: what it weighs and how it is cut."),
         new ValueSlip(session, shape_fields())},
        {Step::roll, tr("Roll"), tr("Wheels and axles."), new ValueSlip(session, roll_fields())},
        {Step::load, tr("Load"), tr("Where the weight goes. Drag a piece on the drawing, or type."), &load},
        {Step::aim,
         tr("Aim"),
         tr("Where each wheel points."),
         new ValueSlip(session, aim_fields()),
         nullptr,
         true,
         {{tr("Drift Board"), new TuningView(session)},
          {tr("Steer and Time"), new SteerCurvesView(session)},
          {tr("Cant"), new CantView(session)}}},
        {Step::run, tr("Run"), tr("The lane, the air, and the finished car."),
         new ValueSlip(session, run_fields())},
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

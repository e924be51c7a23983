#include "sheet/sheet.hpp"

#include "sheet/job.hpp"

#include <rampwright/core/version.hpp>

namespace rampwright::ui::paper {

Sheet make_sheet(const Request& request) {
    const CarPlan& plan = request.project.cars.at(request.car);
    Words words;
    words.units = request.project.units;
    const CarModel model = build_car(request.project, request.car);
    const Job job{request,
                  request.project,
                  plan,
                  request.figures,
                  model,
                  make_car_shape(plan),
                  draw_template(plan, model, TemplateView::side),
                  draw_template(plan, model, TemplateView::top),
                  words,
                  bar_length / request.printed_bar};
    const QString car = from_utf8(plan.name), project = from_utf8(request.project.title);
    Sheet sheet;
    sheet.paper = request.paper;
    sheet.title = project.isEmpty() ? Words::tr("Build sheet: %1").arg(car)
                                    : Words::tr("Build sheet: %1, %2").arg(car, project);
    Flow flow(sheet, {car, project,
                      Words::tr("%1, %2, rampwright %3")
                          .arg(request.file, request.date.toString(Qt::ISODate), from_utf8(version()))});
    put_overview(flow, job);
    put_templates(flow, job);
    put_cut_map(flow, job);
    put_ballast_map(flow, job);
    put_weights(flow, job);
    put_wheels(flow, job);
    put_steps(flow, job);
    put_countdown(flow, job);
    put_figures(flow, job);
    put_inspection(flow, job);
    put_race_night(flow, job);
    flow.finish();
    return sheet;
}

} // namespace rampwright::ui::paper

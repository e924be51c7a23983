#pragma once

#include "drawing/car_shape.hpp"
#include "sheet/flow.hpp"
#include "sheet/sheet.hpp"
#include "sheet/words.hpp"

#include <rampwright/car/car_model.hpp>
#include <rampwright/templates/line_work.hpp>

/// The pages of a sheet, each made from the same job.
namespace rampwright::ui::paper {

struct Job {
    const Request& request;
    const Project& project;
    const CarPlan& plan;
    const Figures& figures;
    CarModel model;
    CarShape shape;
    LineWork side, top; ///< the body's lines
    Words words;
    const LineWork& lines(View view) const { return view == View::top ? top : side; }
    double scale = 1; ///< of everything that must come out at true size: makes up for the printer
};

void put_overview(Flow& flow, const Job& job);
void put_templates(Flow& flow, const Job& job);
void put_cut_map(Flow& flow, const Job& job);
void put_ballast_map(Flow& flow, const Job& job);
void put_weights(Flow& flow, const Job& job);
void put_wheels(Flow& flow, const Job& job);
void put_steps(Flow& flow, const Job& job);
void put_countdown(Flow& flow, const Job& job);
void put_figures(Flow& flow, const Job& job);
void put_inspection(Flow& flow, const Job& job);
void put_race_night(Flow& flow, const Job& job);

} // namespace rampwright::ui::paper

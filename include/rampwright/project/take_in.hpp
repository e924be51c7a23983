#pragma once

#include <rampwright/project/edits.hpp>

/// Cars from another project's file.
namespace rampwright {

/// The name, or "name 2", "name 3", ... whichever no car of the project has yet.
std::string free_car_name(const Project& project, const std::string& name);

/// What taking cars in did, and what was left behind.
struct TakenIn {
    Edit edit;
    std::vector<std::string> names; ///< under which they stand here
    bool other_rules = false;       ///< they were planned for other rules than this project's
    bool other_lane = false;        ///< ... and for another lane or other air
    std::size_t inputs_kept =
        0;                     ///< values of the model written into the cars, which had them of their project
    std::size_t runs_left = 0; ///< timed runs that stay in the other file: they were on its lane
};

/// Adds cars of another project, with names and ids of their own, as one step. They race by this project's
/// rules, lane and air. An input of the model that either project states is written into the car where it
/// would else be another here.
/// @throws Problem where there is no such car, or none is named.
TakenIn take_in_cars(const Document& document, const Document& other, const std::vector<std::size_t>& cars);

} // namespace rampwright

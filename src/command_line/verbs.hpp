#pragma once

#include <rampwright/command_line/command_line.hpp>
#include <rampwright/project/document.hpp>
#include <rampwright/study/draws.hpp>

namespace rampwright {

/// Loads and reads a project, problems told of the file.
Project open_project(const std::string& path);

/// The places of the cars named, all where none is. @throws Problem (could_not) for a name nobody has.
std::vector<std::size_t> choose_cars(const Project& project, const std::vector<std::string>& names,
                                     const std::string& path);

/// --draws and --seed. @throws Problem (wrong_call) for what is no whole number in range.
DrawSettings draw_settings(const Arguments& arguments);

Verb figures_verb();
Verb versus_verb();
Verb check_verb();
Verb outline_verb();

} // namespace rampwright

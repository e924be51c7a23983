#pragma once

#include "project/edit_support.hpp"

#include <rampwright/project/group_edits.hpp>

#include <functional>

namespace rampwright {

/// A car as values, and what of it a group names.
struct GroupIn {
    Project project;
    Group group; ///< in order, each once
    const CarPlan& plan(std::size_t car) const { return project.cars[car]; }
};

/// Reads the document and makes sure of the car and all that the group names.
GroupIn find_group(const Document& document, std::size_t car, const Group& group);

/// @throws Problem where nothing of the group is left: all of it is locked or done.
void refuse_if_all_stay(std::size_t car, const Group& left);

/// "tungsten cube", "3 pieces", "2 pieces and a cut"
std::string words_of(const CarPlan& plan, const Group& group);

/// Whether one hole cannot be told from the other.
bool is_same_hole(const CutPlan& a, const CutPlan& b);

/// @throws Problem where the shelf has not enough for all pieces of these names.
void refuse_if_too_many(const Project& project, std::size_t car, const std::vector<std::string>& names);

} // namespace rampwright

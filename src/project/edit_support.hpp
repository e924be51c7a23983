#pragma once

#include <rampwright/project/edits.hpp>

#include <functional>

namespace rampwright {

/// Makes an edit: lets `change` work on a copy of the tree, sees to it that the result still reads as a
/// project, and finds which values differ.
/// @throws Problem from `change` or from reading; the given document is never touched.
Edit make_edit(const Document& document, std::string name, const std::function<void(Json& root)>& change);

/// A number as the file holds it: SI to the unit that the key's ending tells, rounded to a millionth of
/// that unit, so that 21.3 mm is written as 21.3 and not 21.299999999999997; whole numbers without a point.
Json file_number(double si, std::string_view key);
Json file_point(const Vec2& si, std::string_view key);
Json file_point(const Vec3& si, std::string_view key);

/// The car, made sure of. @throws Problem where there is none of that index.
Json& car_at(Json& root, std::size_t car);
std::string car_name(const Document& document, std::size_t car);

/// The member of that name, made as an empty object where it is missing or null.
Json& object_in(Json& parent, const std::string& key);
/// The same for a list.
Json& list_in(Json& parent, const std::string& key);

/// The element, made sure of. @param what what it is, for the message: "ballast piece".
Json& element_of(Json& list, std::size_t index, const std::string& where, const std::string& what);

/// A piece or a cut of a car, made sure of.
Json& piece_at(Json& root, std::size_t car, std::size_t piece);
Json& cut_at(Json& root, std::size_t car, std::size_t cut);
/// The pieces of a car that a cut holds.
std::vector<Json*> pieces_in(Json& root, std::size_t car, const std::string& cut);

/// @throws Problem where the shelf counts a piece of that name and has not so many left for the car.
void refuse_if_none_left(const Project& project, std::size_t car, const std::string& name, int wanted = 1);

/// An id made of the name's letters and digits that no car has yet.
std::string new_car_id(const Json& cars, const std::string& name);

/// A text member, or `otherwise`.
std::string text_in(const Json& parent, const std::string& key, const std::string& otherwise);

} // namespace rampwright

#pragma once

#include <rampwright/project/document.hpp>

#include <string>
#include <vector>

/// Every change of a project. An edit is a named, pure function from a document to a document; the
/// window's history, the command line and the tests all come through here. Arguments are SI; the file gets
/// its own units, rounded to a millionth of the unit. Every edit throws Problem, and leaves the document as
/// it is, where what it names is not there or the result would not read as a project.
namespace rampwright {

/// What an edit did: the new document, a name for the history ("Move ballast: tungsten cube") and the
/// JSON pointers of the values that differ. An edit that changes nothing has no keys: do not keep it.
struct Edit {
    Document document;
    std::string name;
    std::vector<std::string> keys;
    bool changed() const { return !keys.empty(); }
};

/// The JSON pointers at which two documents differ, leaf by leaf; a value present on one side only,
/// or of another type, counts where it stands. Arrays of unlike length differ as a whole.
std::vector<std::string> difference(const Document& before, const Document& after);

/// Sets the value at a JSON pointer (numbers in the file's own unit); null removes the key, which
/// then takes its default. Objects on the way are made; arrays are not grown.
/// @throws Problem where the pointer leads nowhere or the result would not read as a project.
Edit set_value(const Document& document, const std::string& pointer, const Json& value,
               const std::string& name);

/// @param at centre of the piece, m, car frame.
Edit move_ballast(const Document& document, std::size_t car, std::size_t piece, const Vec3& at);
Edit add_ballast(const Document& document, std::size_t car, const Json& piece);
Edit remove_ballast(const Document& document, std::size_t car, std::size_t piece);
Edit set_ballast_mass(const Document& document, std::size_t car, std::size_t piece, double mass_kg);

/// @param cant rad, positive where the axle's outer end is higher.
Edit set_cant(const Document& document, std::size_t car, Corner corner, double cant);
/// @param toe rad, positive where the wheel steers to the car's left.
Edit set_toe(const Document& document, std::size_t car, Corner corner, double toe);
Edit set_touching(const Document& document, std::size_t car, Corner corner, bool touches);
Edit set_wheel_mass(const Document& document, std::size_t car, Corner corner, double mass_kg);

Edit move_outline_point(const Document& document, std::size_t car, bool plan, std::size_t index,
                        const Vec2& to);
Edit insert_outline_point(const Document& document, std::size_t car, bool plan, std::size_t before,
                          const Vec2& at, bool smooth);
Edit remove_outline_point(const Document& document, std::size_t car, bool plan, std::size_t index);
Edit set_outline_smooth(const Document& document, std::size_t car, bool plan, std::size_t index, bool smooth);

Edit add_cut(const Document& document, std::size_t car, const Json& cut);
Edit move_cut(const Document& document, std::size_t car, std::size_t cut, const Vec3& from, const Vec3& to);
/// Pieces that lay in it stay where they are.
Edit remove_cut(const Document& document, std::size_t car, std::size_t cut);
/// The pieces in it follow.
Edit rename_cut(const Document& document, std::size_t car, std::size_t cut, const std::string& name);

Edit move_axle(const Document& document, std::size_t car, bool front, double x, double z);

Edit duplicate_car(const Document& document, std::size_t car, const std::string& new_name);
/// Its runs go with it.
Edit remove_car(const Document& document, std::size_t car);
Edit rename_car(const Document& document, std::size_t car, const std::string& name);

Edit add_run(const Document& document, const Json& run);
Edit remove_run(const Document& document, std::size_t run);
Edit add_shelf_piece(const Document& document, const Json& piece);
Edit remove_shelf_piece(const Document& document, std::size_t piece);

/// The bench's tables, as a whole.
Edit set_bench_wheels(const Document& document, const std::vector<BenchWheel>& wheels);
Edit set_bench_axles(const Document& document, const std::vector<BenchAxle>& axles);
/// Puts a wheel of the bench on a corner: the numbers that were measured.
Edit use_bench_wheel(const Document& document, std::size_t car, Corner corner, std::size_t bench_wheel);

/// Appends a roll or a turn to a car's tuning log.
Edit add_tuning_event(const Document& document, std::size_t car, const TuningEvent& event);
Edit remove_tuning_event(const Document& document, std::size_t car, std::size_t event);
Edit clear_tuning_log(const Document& document, std::size_t car);

Edit set_units(const Document& document, UnitSystem units);

} // namespace rampwright

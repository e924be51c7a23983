#pragma once

#include <rampwright/project/document.hpp>

#include <optional>
#include <string>
#include <vector>

/// Every change of a project. An edit is a named, pure function from a document to a document; the
/// window's history, the command line and the tests all come through here. Arguments are SI; the file gets
/// its own units, rounded to a millionth of the unit. Every edit throws Problem, and leaves the document as
/// it is, where what it names is not there or the result would not read as a project.
namespace rampwright {

struct HouseholdPiece;
struct StartingShape;

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
/// The same into a cut. @param in the cut's name; empty: none holds it any more.
Edit move_ballast(const Document& document, std::size_t car, std::size_t piece, const Vec3& at,
                  const std::string& in);
/// What holds a piece. The mass that was stated of what held it before goes.
/// @param held id in the table of holdings; empty: not planned.
Edit set_holding(const Document& document, std::size_t car, std::size_t piece, const std::string& held);
Edit add_ballast(const Document& document, std::size_t car, const Json& piece);
Edit remove_ballast(const Document& document, std::size_t car, std::size_t piece);
/// The same piece once more, moved `by` (m). @throws Problem where the shelf has none left.
Edit duplicate_ballast(const Document& document, std::size_t car, std::size_t piece, const Vec3& by);
/// Where a piece from the shelf is put: its centre (m, car frame), a cylinder's axis (0 x, 1 y, 2 z) and the
/// cut that holds it, if any. Putty takes the shape of its cut, which must be named; it has no place itself.
struct Placement {
    Vec3 at = Vec3::Zero();
    int axis = 0;
    std::string in;
};
/// How many more of a shelf's piece may go into a car: its count less those of its name that are in;
/// nothing where the shelf does not count it.
std::optional<int> left_on_shelf(const Project& project, std::size_t car, std::size_t shelf);
/// Puts one piece of the shelf into a car. @throws Problem where the shelf has none left.
Edit add_from_shelf(const Document& document, std::size_t car, std::size_t shelf, const Placement& placement);
Edit set_ballast_mass(const Document& document, std::size_t car, std::size_t piece, double mass_kg);

/// @param cant rad, positive where the axle's outer end is higher.
Edit set_cant(const Document& document, std::size_t car, Corner corner, double cant);
/// @param toe rad, positive where the wheel steers to the car's left.
Edit set_toe(const Document& document, std::size_t car, Corner corner, double toe);
Edit set_touching(const Document& document, std::size_t car, Corner corner, bool touches);
Edit set_wheel_mass(const Document& document, std::size_t car, Corner corner, double mass_kg);

/// Outlines run round the wood once: every edit that would make one touch or cross itself is refused, unless
/// it does so already.
Edit move_outline_point(const Document& document, std::size_t car, bool plan, std::size_t index,
                        const Vec2& to);
Edit insert_outline_point(const Document& document, std::size_t car, bool plan, std::size_t before,
                          const Vec2& at, bool smooth);
Edit remove_outline_point(const Document& document, std::size_t car, bool plan, std::size_t index);
Edit set_outline_smooth(const Document& document, std::size_t car, bool plan, std::size_t index, bool smooth);

/// Puts another outline in the place of the side view's or the top view's. @param points as it is listed, m.
/// @throws Problem, too, where it touches or crosses itself.
Edit set_outline(const Document& document, std::size_t car, bool plan, const std::vector<PlanPoint>& points);

/// Lays a picture under the side or the top view, or changes how the one there lies; keys of it that this
/// version does not know stay.
Edit set_underlay(const Document& document, std::size_t car, bool plan, const Underlay& underlay,
                  const std::string& name);
Edit remove_underlay(const Document& document, std::size_t car, bool plan);
/// The underlay with two of its places a known distance apart: the first stays where it is on the drawing.
/// @param one, other in the view's plane, m, more than a hundredth of a millimetre apart.
/// @param level turns it so that the line between them is level, by a quarter of a turn at most.
/// @throws Problem where the places are one, the distance is none, or the picture would be beyond all size.
Underlay scaled_underlay(const Underlay& underlay, const Vec2& one, const Vec2& other, double distance,
                         bool level);

/// The block's kind of wood, by the table's density: one that was stated before goes; a weighed block stays.
/// @param wood id in the table of woods.
Edit set_wood(const Document& document, std::size_t car, const std::string& wood);

/// Gives a car both outlines of a starting shape, scaled to its block.
Edit start_from_shape(const Document& document, std::size_t car, const StartingShape& shape);

Edit add_cut(const Document& document, std::size_t car, const Json& cut);
Edit add_cut(const Document& document, std::size_t car, const CutPlan& cut);
/// "pocket 2": the base and the first number, from 1, that no cut of the car has.
std::string free_cut_name(const CarPlan& plan, std::string_view base);
/// The same cut once more, moved `by` (m), under a name of its own.
Edit duplicate_cut(const Document& document, std::size_t car, std::size_t cut, const Vec3& by);
/// Of a bore. @param diameter m.
Edit set_cut_diameter(const Document& document, std::size_t car, std::size_t cut, double diameter);
/// Of a bore: whether it ends in a drill's point or flat.
Edit set_cut_pointed(const Document& document, std::size_t car, std::size_t cut, bool pointed);
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
/// A household piece onto the shelf, with its typical mass. @throws Problem where it is there already.
Edit add_household_piece(const Document& document, const HouseholdPiece& piece);
Edit remove_shelf_piece(const Document& document, std::size_t piece);

/// Replaces the race's rules by these, a `rules` object as the file holds it; keys that this version does not
/// know stay as they are. @param title what the history calls them.
Edit set_rules(const Document& document, const Json& rules, const std::string& title);

/// Takes weighings of the finished car (kg, one number a weighing): writes them down, and sets the measured
/// mass and front load to their means; where the front was not weighed but the rear was, to what is left.
/// Empty lists take the weighing back, and the measured value with it.
Edit set_readings(const Document& document, std::size_t car, const Readings& readings);

/// Puts another lane in: one of the library, or one from a file (track_library.hpp).
Edit set_track(const Document& document, const Json& track);
/// Pieces of the lane. The shape is another then: a start height that was stated of the old one goes, and a
/// finish line beyond the new end moves to it.
Edit add_track_piece(const Document& document, std::size_t before, const Json& piece);
Edit set_track_piece(const Document& document, std::size_t index, const Json& piece);
Edit remove_track_piece(const Document& document, std::size_t index);
/// Measured points (X, Z) instead of pieces. @param points m, X growing.
Edit set_track_points(const Document& document, const std::vector<Vec2>& points);
/// @param start, finish m along the surface from the start-gate end.
Edit set_track_lines(const Document& document, double start, double finish);

/// What was typed of a wheel's swings, and of its spin-down. @param wheel place in the bench's table; none: a
/// wheel that is not in it.
Edit set_pendulum(const Document& document, std::optional<std::size_t> wheel,
                  const PendulumReadings& readings);
Edit set_spin_down(const Document& document, std::optional<std::size_t> wheel,
                   const SpinDownReadings& readings);

/// The bench's tables, as a whole. Keys that this version does not know stay with their row.
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

#pragma once

#include <rampwright/project/edits.hpp>

#include <string>
#include <string_view>
#include <vector>

/// Edits of several things of a car at once, one step each. What is locked stays where it is, and so do the
/// cuts of wood that is marked as drilled: they are left out, and an edit that is left with nothing throws
/// Problem. Lengths in m, car frame.
namespace rampwright {

/// Pieces of ballast and cuts of one car, by their places in its lists.
struct Group {
    std::vector<std::size_t> pieces, cuts;
    std::size_t size() const { return pieces.size() + cuts.size(); }
    bool operator==(const Group&) const = default;
};

/// Of a group, what may be moved: not a locked piece, nor putty, which lies where its cut is, nor a cut in
/// drilled wood.
Group movable(const CarPlan& plan, const Group& group);
/// Of a group, what may be taken away: putty too.
Group removable(const CarPlan& plan, const Group& group);

/// Where a piece comes to lie, and in which cut; empty: none holds it.
struct PieceMove {
    std::size_t piece = 0;
    Vec3 at = Vec3::Zero();
    std::string in;
};
/// Pieces to their places, and cuts by one way for all.
Edit move_group(const Document& document, std::size_t car, const std::vector<PieceMove>& pieces,
                const std::vector<std::size_t>& cuts, const Vec3& by);
/// Pieces that lay in a cut that goes stay where they are.
Edit remove_group(const Document& document, std::size_t car, const Group& group);
/// Everything once more, moved `by`. @throws Problem where the shelf has not enough.
Edit duplicate_group(const Document& document, std::size_t car, const Group& group, const Vec3& by);
/// Locks pieces in place, or lets them go.
Edit lock_group(const Document& document, std::size_t car, const std::vector<std::size_t>& pieces,
                bool locked);

/// To what things are brought along an axis: to the lowest or highest face of them all, to the middle between
/// those, or to the body's centre line (axis y).
enum class AlignTo { low, middle, high, centre_line };
/// Locked things count in what the others are brought to.
/// @param axis 0 x, 1 y, 2 z; the centre line goes by y alone.
Edit align_group(const Document& document, std::size_t car, const Group& group, int axis, AlignTo to);
/// Equal gaps between neighbours along an axis; the first and the last stay.
/// @throws Problem for fewer than three things, or where one between the ends may not be moved.
Edit space_group(const Document& document, std::size_t car, const Group& group, int axis);

/// Across the centre line, y to -y. A cut takes along what lies in it. A piece in a cut to one side goes into
/// that cut's mirror image where the car has it; else its cut comes along. Twice is as before.
/// @throws Problem where a locked piece or drilled wood stands in the way.
Edit mirror_group(const Document& document, std::size_t car, const Group& group);
/// The same with a copy; what is its own mirror image is not copied.
/// @throws Problem where nothing is left, or the shelf has not enough.
Edit mirror_copy(const Document& document, std::size_t car, const Group& group);

/// A group as a text of its own for the clipboard: rows as the file has them, and the cuts that hold the
/// pieces. `read_pieces` reads it.
Json copy_group(const Document& document, std::size_t car, const Group& group);
/// @throws Problem where the text is no such group.
Json read_pieces(std::string_view text);
/// Puts a copied group in. A piece's cut comes along where the car has none just like it. What would lie
/// exactly on its twin goes aside. @param aside the way aside.
/// @throws Problem where the rows do not read, the shelf has not enough, or the wood is drilled and a cut
///         would have to come along.
Edit paste_group(const Document& document, std::size_t car, const Json& pieces, const Vec3& aside);

} // namespace rampwright

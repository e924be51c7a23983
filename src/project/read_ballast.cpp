#include "project/piece_shapes.hpp"
#include "project/read_parts.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/materials/materials.hpp>

#include <algorithm>
#include <numbers>

namespace rampwright {

namespace {

double volume_of(PieceShape shape, const std::vector<double>& size) {
    switch (shape) {
    case PieceShape::box:
    case PieceShape::sheet:
        return size[0] * size[1] * size[2];
    case PieceShape::cylinder:
        return std::numbers::pi / 4 * size[0] * size[0] * size[1];
    case PieceShape::sphere:
        return std::numbers::pi / 6 * size[0] * size[0] * size[0];
    case PieceShape::putty:
        return 0;
    }
    return 0;
}

} // namespace

PieceBody read_piece(const Node& piece) {
    PieceBody body;
    body.shape = piece["shape"].word<PieceShape>(piece_shape_words, PieceShape::box);
    const Node size = piece["size_mm"];
    if (size.present() || size_count(body.shape) > 0)
        body.size = size.numbers(size_count(body.shape), above(0, 1000));
    body.material = piece["material"].text();
    const Node mass = piece["mass_g"];
    body.mass_given = mass.present();
    if (body.mass_given) {
        body.mass = mass.number(above(0, 5000));
    } else {
        if (body.shape == PieceShape::putty) mass.refuse_missing("weigh the putty and give its mass");
        const Material* material = find_material(body.material);
        if (material == nullptr)
            mass.refuse(Core::tr("the mass is missing, and the material \"{what}\" is not in the table",
                                 {{"what", body.material}}),
                        Core::tr("give mass_g, or one of {what}", {{"what", names_of(materials())}}));
        const double computed = material->density.value * volume_of(body.shape, body.size);
        body.mass = mass.assume_si(
            computed, computed / gram * material->density.sigma / material->density.value, material->status);
    }
    return body;
}

std::vector<BallastPlan> read_ballast(const Node& ballast, const std::vector<CutPlan>& cuts) {
    std::vector<BallastPlan> pieces;
    for (const Node& row : ballast.rows()) {
        PieceBody body = read_piece(row);
        BallastPlan piece;
        piece.name = row["piece"].text("piece " + std::to_string(pieces.size() + 1));
        piece.shape = body.shape;
        piece.size = std::move(body.size);
        piece.material = std::move(body.material);
        piece.mass = body.mass;
        piece.mass_given = body.mass_given;

        const Node in = row["in"];
        piece.in = in.text();
        if (!piece.in.empty() && !find_cut(cuts, piece.in))
            in.refuse(Core::tr("no cut of this car has the name \"{what}\"", {{"what", piece.in}}),
                      Core::tr("give the name of one of its cuts, or leave it out"));
        const Node held = row["held"], held_mass = row["held_g"];
        piece.held_mass = held_mass.maybe_number(from_to(0, 1000));
        if (held.present()) {
            const Holding* holding = find_holding(held.text());
            if (holding == nullptr)
                held.refuse(Core::tr("\"{what}\" is no way of holding a weight that the table knows",
                                     {{"what", held.text()}}),
                            Core::tr("give one of {what}", {{"what", names_of(holdings())}}));
            piece.held = holding->id;
            if (!piece.held_mass)
                held_mass.assume_si(holding->mass.value, holding->mass.sigma / gram, holding->status);
        }
        const Node at = row["at_mm"];
        if (at.present())
            piece.at = at.point3(from_to(-1000, 1000));
        else if (piece.shape != PieceShape::putty)
            at.refuse_missing("give the centre of the piece, [x, y, z]");
        if (piece.shape == PieceShape::putty && piece.in.empty())
            in.refuse_missing("putty takes the shape of what it fills: give the name of its cut");
        if (piece.shape == PieceShape::cylinder)
            piece.axis = row["axis"].word<int>({{"x", 0}, {"y", 1}, {"z", 2}}, 0);
        piece.turned = row["turned_deg"].number(from_to(-360, 360), {0});
        piece.fixed = row["fixed"].flag(false);
        pieces.push_back(std::move(piece));
    }
    return pieces;
}

} // namespace rampwright

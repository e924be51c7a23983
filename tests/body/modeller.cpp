#include "body/modeller.hpp"

#include <BRepAlgoAPI_Common.hxx>
#include <BRepAlgoAPI_Cut.hxx>
#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakePolygon.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <BRepGProp.hxx>
#include <BRepOffsetAPI_ThruSections.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <BRepPrimAPI_MakeSphere.hxx>
#include <GC_MakeArcOfCircle.hxx>
#include <GProp_GProps.hxx>
#include <Geom_BezierCurve.hxx>
#include <TColgp_Array1OfPnt.hxx>
#include <TopTools_ListOfShape.hxx>
#include <TopoDS.hxx>
#include <algorithm>
#include <gp_Ax2.hxx>
#include <gp_Circ.hxx>
#include <stdexcept>

namespace modeller {

using namespace rampwright;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

gp_Pnt mm(const Vector3d& p) {
    return {1e3 * p.x(), 1e3 * p.y(), 1e3 * p.z()};
}

/// Puts an outline's point into space: upright (x, z) or flat (x, y).
Vector3d in_space(const Vector2d& p, bool upright) {
    return upright ? Vector3d(p.x(), 0, p.y()) : Vector3d(p.x(), p.y(), 0);
}

TopoDS_Shape extruded(const Outline& outline, bool upright) {
    BRepBuilderAPI_MakeWire wire;
    for (const auto& piece : outline_pieces(outline)) {
        if (piece.straight) {
            wire.Add(BRepBuilderAPI_MakeEdge(mm(in_space(piece.control[0], upright)),
                                             mm(in_space(piece.control[3], upright)))
                         .Edge());
        } else {
            TColgp_Array1OfPnt poles(1, 4);
            for (int i = 0; i < 4; ++i)
                poles(i + 1) = mm(in_space(piece.control[i], upright));
            wire.Add(BRepBuilderAPI_MakeEdge(Handle(Geom_BezierCurve)(new Geom_BezierCurve(poles))).Edge());
        }
    }
    const TopoDS_Face face = BRepBuilderAPI_MakeFace(wire.Wire(), true);
    const gp_Vec along = upright ? gp_Vec(0, 500, 0) : gp_Vec(0, 0, 500);
    gp_Trsf back;
    back.SetTranslation(-0.5 * along);
    return BRepPrimAPI_MakePrism(BRepBuilderAPI_Transform(face, back).Shape(), along).Shape();
}

/// The two values of a straight outline at x, from the inside of one stretch.
std::array<double, 2> sides(const Outline& outline, double x, double inside) {
    std::array<double, 2> out{1e9, -1e9};
    for (size_t i = 0; i < outline.size(); ++i) {
        const Vector2d a = outline[i].at, b = outline[(i + 1) % outline.size()].at;
        if (std::min(a.x(), b.x()) < inside && inside < std::max(a.x(), b.x())) {
            const double v = a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x());
            out = {std::min(out[0], v), std::max(out[1], v)};
        }
    }
    return out;
}

TopoDS_Wire rounded_section(double x, std::array<double, 2> y, std::array<double, 2> z, double radius) {
    const double r = std::min({radius, (y[1] - y[0]) / 2, (z[1] - z[0]) / 2});
    BRepBuilderAPI_MakeWire wire;
    const Vector3d corner[4] = {{x, y[1], z[0]}, {x, y[1], z[1]}, {x, y[0], z[1]}, {x, y[0], z[0]}};
    const Vector3d in[4] = {{0, -1, 1}, {0, -1, -1}, {0, 1, -1}, {0, 1, 1}};
    const auto entry = [&](int i) -> Vector3d { // from the side before: sides alternate y, z
        return corner[i] + (i % 2 == 0 ? Vector3d(0, r * in[i].y(), 0) : Vector3d(0, 0, r * in[i].z()));
    };
    const auto leave = [&](int i) -> Vector3d {
        return corner[i] + (i % 2 == 0 ? Vector3d(0, 0, r * in[i].z()) : Vector3d(0, r * in[i].y(), 0));
    };
    for (int i = 0; i < 4; ++i) {
        const Vector3d middle = corner[i] + r * (1 - std::sqrt(0.5)) * in[i];
        wire.Add(BRepBuilderAPI_MakeEdge(GC_MakeArcOfCircle(mm(entry(i)), mm(middle), mm(leave(i))).Value())
                     .Edge());
        if ((leave(i) - entry((i + 1) % 4)).norm() > 1e-9)
            wire.Add(BRepBuilderAPI_MakeEdge(mm(leave(i)), mm(entry((i + 1) % 4))).Edge());
    }
    return wire.Wire();
}

} // namespace

TopoDS_Shape uncut(const BodyShape& shape) {
    return common(extruded(shape.profile, true), extruded(shape.plan, false));
}

TopoDS_Shape rounded(const BodyShape& shape) {
    std::vector<double> xs;
    for (const auto* outline : {&shape.profile, &shape.plan})
        for (const auto& p : *outline)
            xs.push_back(p.at.x());
    std::sort(xs.begin(), xs.end());
    xs.erase(std::unique(xs.begin(), xs.end(), [](double a, double b) { return b - a < 1e-9; }), xs.end());
    TopoDS_Shape whole;
    for (size_t i = 0; i + 1 < xs.size(); ++i) {
        const double inside = 0.5 * (xs[i] + xs[i + 1]);
        BRepOffsetAPI_ThruSections loft(true, true, 1e-7);
        for (const double x : {xs[i], xs[i + 1]})
            loft.AddWire(rounded_section(x, sides(shape.plan, x, inside), sides(shape.profile, x, inside),
                                         shape.edge_radius));
        loft.Build();
        if (whole.IsNull()) {
            whole = loft.Shape();
        } else {
            throw std::logic_error("one loft at a time");
        }
    }
    return whole;
}

TopoDS_Shape solid(const Cut& cut) {
    if (const auto* pocket = std::get_if<Pocket>(&cut))
        return BRepPrimAPI_MakeBox(mm(pocket->low), mm(pocket->high)).Shape();
    const auto& bore = std::get<Bore>(cut);
    const Vector3d along = bore.to - bore.from;
    const gp_Ax2 axis(mm(bore.from), gp_Dir(along.x(), along.y(), along.z()));
    const double length = 1e3 * along.norm(), radius = 500 * bore.diameter;
    if (!bore.pointed) return BRepPrimAPI_MakeCylinder(axis, radius, length).Shape();
    const auto place = [&](double r, double t) {
        return axis.Location().Translated(r * gp_Vec(axis.XDirection()) + t * gp_Vec(axis.Direction()));
    };
    const double tip = radius / std::tan(59 * std::numbers::pi / 180);
    BRepBuilderAPI_MakePolygon half(place(0, 0), place(radius, 0), place(radius, length),
                                    place(0, length + tip), true);
    return BRepPrimAPI_MakeRevol(BRepBuilderAPI_MakeFace(half.Wire(), true).Face(),
                                 gp_Ax1(axis.Location(), axis.Direction()))
        .Shape();
}

TopoDS_Shape block(const Vector3d& centre, const Vector3d& size, double turned) {
    const TopoDS_Shape at_rest = BRepPrimAPI_MakeBox(mm(centre - size / 2), mm(centre + size / 2)).Shape();
    gp_Trsf turn;
    turn.SetRotation(gp_Ax1(mm(centre), gp_Dir(0, 0, 1)), turned);
    return BRepBuilderAPI_Transform(at_rest, turn, true).Shape();
}

TopoDS_Shape rod(const Vector3d& centre, const Vector3d& axis, double diameter, double length) {
    return solid(Bore{centre - axis * (length / 2), centre + axis * (length / 2), diameter, false});
}

TopoDS_Shape ball(const Vector3d& centre, double diameter) {
    return BRepPrimAPI_MakeSphere(mm(centre), 500 * diameter).Shape();
}

TopoDS_Shape less(const TopoDS_Shape& from, const std::vector<TopoDS_Shape>& tools) {
    if (tools.empty()) return from;
    TopTools_ListOfShape arguments, cutters;
    arguments.Append(from);
    for (const auto& t : tools)
        cutters.Append(t);
    BRepAlgoAPI_Cut cut;
    cut.SetArguments(arguments);
    cut.SetTools(cutters);
    cut.SetRunParallel(false);
    cut.Build();
    if (cut.HasErrors()) throw std::runtime_error("the solid modeller could not cut");
    return cut.Shape();
}

TopoDS_Shape common(const TopoDS_Shape& one, const TopoDS_Shape& other) {
    BRepAlgoAPI_Common both(one, other);
    if (both.HasErrors()) throw std::runtime_error("the solid modeller could not intersect");
    return both.Shape();
}

Moments moments(const TopoDS_Shape& shape) {
    GProp_GProps props;
    BRepGProp::VolumeProperties(shape, props, 1e-9, false, false);
    // The modeller gives the tensor about its own origin where none is given: ∫ (r² 1 - r rᵀ) dV.
    Moments m;
    m.volume = 1e-9 * props.Mass();
    const gp_Pnt c = props.CentreOfMass();
    const Vector3d centre = 1e-3 * Vector3d(c.X(), c.Y(), c.Z());
    const gp_Mat about = props.MatrixOfInertia(); // about the centre of mass
    Eigen::Matrix3d inertia;
    for (int i = 0; i < 3; ++i)
        for (int j = 0; j < 3; ++j)
            inertia(i, j) = 1e-15 * about(i + 1, j + 1);
    m.first = m.volume * centre;
    m.second = 0.5 * inertia.trace() * Eigen::Matrix3d::Identity() - inertia +
               m.volume * centre * centre.transpose();
    return m;
}

} // namespace modeller

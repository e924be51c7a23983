#pragma once

#include <rampwright/body/solid.hpp>

#include <Eigen/Core>

#include <TopoDS_Shape.hxx>
#include <vector>

namespace modeller {

/// The referee: a general solid modeller (boundary representation, Open CASCADE 7.6), which shares nothing
/// with the engine under test. It works in mm, as its tolerance of 1e-7 is absolute; moments come back in
/// metres.
TopoDS_Shape uncut(const rampwright::BodyShape& shape);
/// Profile and plan straight, one rectangle per section, corners at the given x only: ruled lofts between
/// rounded sections, which are exact where the sides change linearly.
TopoDS_Shape rounded(const rampwright::BodyShape& shape);
TopoDS_Shape solid(const rampwright::Cut& cut);
TopoDS_Shape block(const Eigen::Vector3d& centre, const Eigen::Vector3d& size, double turned);
TopoDS_Shape rod(const Eigen::Vector3d& centre, const Eigen::Vector3d& axis, double diameter, double length);
TopoDS_Shape ball(const Eigen::Vector3d& centre, double diameter);

TopoDS_Shape less(const TopoDS_Shape& from, const std::vector<TopoDS_Shape>& tools);
TopoDS_Shape common(const TopoDS_Shape& one, const TopoDS_Shape& other);
rampwright::Moments moments(const TopoDS_Shape& shape);

} // namespace modeller

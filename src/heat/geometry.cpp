#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/heat/geometry.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

double dot(std::complex<double> a, std::complex<double> b) {
    return a.real() * b.real() + a.imag() * b.imag();
}
std::complex<double> turned_left(std::complex<double> a) {
    return {-a.imag(), a.real()};
}

} // namespace

CentrePath::CentrePath(const Track& track, double radius) : track_(&track), radius_(radius) {
    double q = track.pieces().front().start();
    for (const SurfacePiece& piece : track.pieces()) {
        starts_.push_back(q);
        q += piece.length() - radius * piece.turn(piece.length());
        const double sharpest =
            std::max(piece.curvature(), piece.curvature() + piece.curvature_rate() * piece.length());
        if (sharpest * radius >= 0.9)
            throw Problem(Exit::could_not, "/track",
                          Core::tr("the surface turns upward about as tightly as a wheel"),
                          Core::tr("check the arc's radius or the measured points"));
    }
}

CentrePath::Point CentrePath::point(std::size_t n, double q) const {
    const SurfacePiece& piece = track_->pieces()[n];
    // q = s - R (k s + c s^2 / 2), solved for s by the form that does not cancel.
    const double b = 1 - radius_ * piece.curvature(), rate = radius_ * piece.curvature_rate(),
                 d = q - starts_[n];
    const double s = rate == 0 ? d / b : 2 * d / (b + std::sqrt(std::max(0.0, b * b - 2 * rate * d)));
    const SurfacePoint surface = piece.point(s);
    const double shrink = 1 / (1 - radius_ * surface.curvature);
    return {surface.at + radius_ * turned_left(surface.tangent), surface.tangent, surface.curvature * shrink,
            piece.curvature_rate() * shrink * shrink * shrink};
}

std::size_t CentrePath::find_piece(double q) const {
    return std::size_t(std::upper_bound(starts_.begin() + 1, starts_.end(), q) - starts_.begin()) - 1;
}

double CentrePath::above(double s) const {
    const std::size_t n = track_->find_piece(s);
    const SurfacePiece& piece = track_->pieces()[n];
    const double along = s - piece.start();
    return starts_[n] + along - radius_ * piece.turn(along);
}

AxlePair::AxlePair(const Track& track, double rear_radius, double front_radius, double distance)
    : rear_(track, rear_radius), front_(track, front_radius), distance_(distance) {}

Pose AxlePair::pose(std::size_t rear_piece, std::size_t front_piece, double q, double front_q) const {
    Pose pose;
    pose.rear = rear_.point(rear_piece, q);
    // Newton on the distance between the centres.
    std::complex<double> between;
    for (int iteration = 0; iteration < 12; ++iteration) {
        pose.front = front_.point(front_piece, front_q);
        between = pose.front.at - pose.rear.at;
        const double error = std::norm(between) - distance_ * distance_;
        const double step = error / (2 * dot(between, pose.front.tangent));
        front_q -= step;
        if (std::abs(step) < 1e-7) {
            // What a move this small leaves out is of its third power: no need to evaluate the path again.
            const double turn = -step * pose.front.curvature;
            const std::complex<double> across = turned_left(pose.front.tangent);
            pose.front.at -= step * (pose.front.tangent + 0.5 * turn * across);
            pose.front.tangent += turn * across - 0.5 * turn * turn * pose.front.tangent;
            pose.front.curvature -= step * pose.front.curvature_rate;
            between = pose.front.at - pose.rear.at;
            break;
        }
    }
    pose.front_q = front_q;
    pose.along = between / distance_;
    const std::complex<double> across = turned_left(pose.along);
    const double forward = dot(pose.along, pose.front.tangent);
    pose.front_rate = dot(pose.along, pose.rear.tangent) / forward;
    const std::complex<double> opening = pose.front.tangent * pose.front_rate - pose.rear.tangent;
    pose.pitch_rate = dot(across, opening) / distance_;
    const std::complex<double> bend =
        pose.front.curvature * pose.front_rate * pose.front_rate * turned_left(pose.front.tangent) -
        pose.rear.curvature * turned_left(pose.rear.tangent);
    pose.front_rate_rate = (-distance_ * pose.pitch_rate * pose.pitch_rate - dot(pose.along, bend)) / forward;
    pose.pitch_rate_rate = dot(across, pose.front.tangent * pose.front_rate_rate + bend) / distance_;
    return pose;
}

Pose AxlePair::pose(double q) const {
    const std::size_t rear_piece = rear_.find_piece(q);
    // The front piece is the one whose own solution lies in it; start from the piece one wheelbase ahead.
    double guess = q + distance_;
    for (std::size_t tries = 0; tries < rear_.count(); ++tries) {
        const std::size_t piece = front_.find_piece(guess);
        const Pose found = pose(rear_piece, piece, q, guess);
        if (front_.find_piece(found.front_q) == piece) return found;
        guess = found.front_q;
    }
    return pose(rear_piece, front_.find_piece(guess), q, guess);
}

double AxlePair::rear_of_front(double front_q) const {
    const CentrePath::Point front = front_.point(front_.find_piece(front_q), front_q);
    double q = front_q - distance_;
    for (int iteration = 0; iteration < 50; ++iteration) {
        const CentrePath::Point rear = rear_.point(rear_.find_piece(q), q);
        const std::complex<double> between = front.at - rear.at;
        const double step = (std::norm(between) - distance_ * distance_) / (2 * dot(between, rear.tangent));
        q += step;
        if (std::abs(step) < 1e-14) break;
    }
    return q;
}

} // namespace rampwright

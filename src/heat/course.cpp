#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/heat/heat.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

double dot(std::complex<double> a, std::complex<double> b) {
    return a.real() * b.real() + a.imag() * b.imag();
}

double centre_distance(const HeatCar& car) {
    return std::hypot(car.wheelbase, car.front.radius - car.rear.radius);
}

/// One straight line from the rear axle's piece to the front one's.
bool in_a_line(const std::vector<SurfacePiece>& pieces, std::size_t rear, std::size_t front) {
    return std::all_of(pieces.begin() + std::ptrdiff_t(rear), pieces.begin() + std::ptrdiff_t(front) + 1,
                       [](const SurfacePiece& piece) { return piece.straight(); });
}

} // namespace

std::complex<double> in_axle_frame(const HeatCar& car, const Vec2& level) {
    const std::complex<double> line(car.wheelbase, car.front.radius - car.rear.radius);
    return std::complex<double>(level.x(), level.y() - car.rear.radius) * std::conj(line) / std::abs(line);
}

Course::Course(const Track& track, const HeatCar& car)
    : track_(&track),
      axles_(track, car.rear.radius, car.front.radius, centre_distance(car)),
      nose_(in_axle_frame(car, car.nose)),
      gravity_(track.gravity()),
      start_line_(track.start_line()) {
    const double from = find_line(track.start_line(), axles_.rear().above(track.start_line()) - nose_.real());
    const double to = find_line(track.finish_line(), axles_.rear().above(track.finish_line()) - nose_.real());
    start_slope_ = track.slope(track.start_line());

    // Where either axle passes from one piece to the next: nothing is smooth across such a place. The joints
    // of each axle come in order, so that the two rows are merged.
    const std::vector<SurfacePiece>& pieces = track.pieces();
    const Pose first = axles_.pose(from);
    std::size_t rear = axles_.rear().find_piece(from), front = axles_.front().find_piece(first.front_q);
    const auto next_of_rear = [&] {
        return rear + 1 < axles_.rear().count() ? axles_.rear().start(rear + 1) : to;
    };
    const auto next_of_front = [&] {
        return front + 1 < axles_.front().count() ? axles_.rear_of_front(axles_.front().start(front + 1))
                                                  : to;
    };
    double q = from, front_q = first.front_q, rear_next = next_of_rear(), front_next = next_of_front();
    while (q < to) {
        const double next = std::min({rear_next, front_next, to});
        if (next - q >= 1e-12) {
            stretches_.push_back({q, next, rear, front, front_q, in_a_line(pieces, rear, front)});
            front_q = next == front_next ? axles_.front().start(front + 1) : front_q + (next - q);
            q = next;
        }
        if (next == to) break;
        if (next == rear_next) {
            ++rear;
            rear_next = next_of_rear();
        }
        if (next == front_next) {
            ++front;
            front_next = next_of_front();
        }
    }
    if (stretches_.empty())
        throw Problem(Exit::could_not, "/track/finish_line_mm",
                      Core::tr("the finish line is reached before the start"),
                      Core::tr("put the lines further apart"));
}

double Course::find_line(double s, double guess) const {
    // The nose's foot point is on the line where the nose has no component along the surface there.
    const SurfacePoint line = track_->point(s);
    double q = guess;
    for (int iteration = 0; iteration < 60; ++iteration) {
        const Pose pose = axles_.pose(q);
        const std::complex<double> arm = pose.along * nose_;
        const std::complex<double> nose = pose.rear.at + arm;
        const std::complex<double> rate =
            pose.rear.tangent + pose.pitch_rate * std::complex<double>(-arm.imag(), arm.real());
        const double step = dot(nose - line.at, line.tangent) / dot(rate, line.tangent);
        q -= step;
        if (std::abs(step) < 1e-14) break;
    }
    return q;
}

double Course::foot(double q) const {
    const Pose pose = axles_.pose(q);
    const std::complex<double> nose = pose.rear.at + pose.along * nose_;
    double s = start_line_ + (q - start());
    for (int iteration = 0; iteration < 60; ++iteration) {
        const SurfacePoint surface = track_->point(s);
        const std::complex<double> offset = (nose - surface.at) * std::conj(surface.tangent);
        const double step = offset.real() / (1 - surface.curvature * offset.imag());
        s += step;
        if (std::abs(step) < 1e-13) break;
    }
    return s - start_line_;
}

} // namespace rampwright

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/track/measured.hpp>
#include <rampwright/track/track.hpp>

#include <Eigen/QR>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

/// What a person measures with tape and level: the fit need not follow the points closer than this.
constexpr double reading_error = 0.3e-3;

/// The curve as its unknowns: height and slope at the first point's X, curvature at each knot.
class Candidate {
public:
    Candidate(double start_x, std::vector<double> knots) : start_x_(start_x), knots_(std::move(knots)) {}

    std::vector<SurfacePiece> pieces(const Eigen::VectorXd& unknowns) const {
        std::vector<SurfacePiece> result;
        std::complex<double> at(start_x_, unknowns[0]), tangent = std::polar(1.0, unknowns[1]);
        for (std::size_t n = 0; n + 1 < knots_.size(); ++n) {
            const double step = knots_[n + 1] - knots_[n];
            const double k = unknowns[Eigen::Index(n) + 2], k_end = unknowns[Eigen::Index(n) + 3];
            result.emplace_back(knots_[n], step, at, tangent, k, (k_end - k) / step);
            const SurfacePoint joint = result.back().point(step);
            at = joint.at;
            tangent = joint.tangent;
        }
        return result;
    }

    /// Signed distance of each point from the curve, along the curve's normal at its foot.
    Eigen::VectorXd distances(const Eigen::VectorXd& unknowns, const std::vector<Vec2>& points) const {
        const std::vector<SurfacePiece> curve = pieces(unknowns);
        Eigen::VectorXd result(points.size());
        std::size_t piece = 0;
        double s = 0;
        for (std::size_t n = 0; n < points.size(); ++n) {
            const std::complex<double> target(points[n].x(), points[n].y());
            std::complex<double> offset;
            SurfacePoint foot;
            for (int iteration = 0; iteration < 20; ++iteration) {
                while (piece + 1 < curve.size() && s > curve[piece].end())
                    ++piece;
                while (piece > 0 && s < curve[piece].start())
                    --piece;
                foot = curve[piece].point(s - curve[piece].start());
                offset = (target - foot.at) * std::conj(foot.tangent);
                s += offset.real();
                if (std::abs(offset.real()) < 1e-12) break;
            }
            result[Eigen::Index(n)] = offset.imag();
        }
        return result;
    }

private:
    double start_x_;
    std::vector<double> knots_;
};

/// A knot a point, none closer than a hundredth of the whole: more could not be told from reading errors.
std::vector<double> place_knots(const std::vector<Vec2>& points) {
    double total = 0;
    for (std::size_t n = 1; n < points.size(); ++n)
        total += (points[n] - points[n - 1]).norm();
    std::vector<double> knots{0};
    double s = 0;
    for (std::size_t n = 1; n < points.size(); ++n) {
        s += (points[n] - points[n - 1]).norm();
        if (s - knots.back() > total / 100 || n + 1 == points.size()) knots.push_back(s);
    }
    return knots;
}

} // namespace

MeasuredCurve fit_measured(const std::vector<Vec2>& points) {
    if (points.size() < 4)
        throw Problem(
            Exit::could_not, "/track/measured_mm", Core::tr("a measured track needs at least four points"),
            Core::tr("measure the height at more places, closest together where the slope changes"));
    for (std::size_t n = 1; n < points.size(); ++n)
        if (!(points[n].x() > points[n - 1].x()))
            throw Problem(Exit::could_not, "/track/measured_mm/" + std::to_string(n),
                          Core::tr("X does not rise from the point before"),
                          Core::tr("list the points from the start gate to the end"));

    const std::vector<double> knots = place_knots(points);
    const Candidate candidate(points[0].x(), knots);
    const auto count = Eigen::Index(knots.size());
    const auto rows = Eigen::Index(points.size());
    Eigen::VectorXd unknowns = Eigen::VectorXd::Zero(count + 2);
    unknowns[0] = points[0].y();
    unknowns[1] = std::atan2(points[1].y() - points[0].y(), points[1].x() - points[0].x());

    // Smoothing falls until the curve is as close to the points as a person can read them.
    const double total = knots.back();
    for (double smoothing = 1e-2;; smoothing *= 0.1) {
        Eigen::VectorXd distance = candidate.distances(unknowns, points);
        for (int iteration = 0; iteration < 12; ++iteration) {
            Eigen::MatrixXd system = Eigen::MatrixXd::Zero(rows + count - 1, count + 2);
            Eigen::VectorXd right = Eigen::VectorXd::Zero(rows + count - 1);
            for (Eigen::Index j = 0; j < count + 2; ++j) {
                Eigen::VectorXd moved = unknowns;
                const double step = j < 2 ? 1e-6 : 1e-5;
                moved[j] += step;
                system.col(j).head(rows) = (candidate.distances(moved, points) - distance) / step;
            }
            right.head(rows) = -distance;
            for (Eigen::Index j = 0; j + 1 < count; ++j) {
                const double weight =
                    std::sqrt(smoothing * total * total * total / (knots[j + 1] - knots[j]) / double(count)) *
                    1e-2;
                system(rows + j, j + 2) = -weight;
                system(rows + j, j + 3) = weight;
                right[rows + j] = -weight * (unknowns[j + 3] - unknowns[j + 2]);
            }
            const Eigen::VectorXd step = system.colPivHouseholderQr().solve(right);
            unknowns += step;
            distance = candidate.distances(unknowns, points);
            if (step.tail(count).cwiseAbs().maxCoeff() < 1e-9) break;
        }
        MeasuredCurve curve;
        curve.rms = std::sqrt(distance.squaredNorm() / double(rows));
        curve.greatest = distance.cwiseAbs().maxCoeff();
        if (curve.rms > reading_error && smoothing > 1e-12) continue;
        curve.start = {points[0].x(), unknowns[0]};
        curve.slope = unknowns[1];
        for (Eigen::Index n = 0; n + 1 < count; ++n)
            curve.stretches.push_back(
                {knots[std::size_t(n) + 1] - knots[std::size_t(n)], unknowns[n + 2], unknowns[n + 3]});
        return curve;
    }
}

} // namespace rampwright

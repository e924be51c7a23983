#include "body/outside.hpp"
#include "body/pieces.hpp"

#include <rampwright/body/walls.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

using namespace body_detail;
using Eigen::Vector2d;
using Eigen::Vector3d;

/// Nearer than this two surfaces meet, and what lies between is no wall.
constexpr double meeting = 1e-9;

Vector2d side_view(const Vector3d& p) {
    return {p.x(), p.z()};
}
Vector2d top_view(const Vector3d& p) {
    return {p.x(), p.y()};
}

/// One flat outside face: a chord of the profile across the plan, or of the plan up the profile.
struct Patch {
    Vector2d from, along, inward; ///< in its own view; `along` and `inward` are unit vectors
    double length;
    bool of_profile;
    Vector3d normal() const { // inward
        return of_profile ? Vector3d(inward.x(), 0, inward.y()) : Vector3d(inward.x(), inward.y(), 0);
    }
    double distance(const Vector3d& p) const {
        return inward.dot((of_profile ? side_view(p) : top_view(p)) - from);
    }
};

/// The body's outside and inside, as the search for walls asks after them.
class Body {
public:
    explicit Body(const BodyShape& shape)
        : stock(shape),
          profile_(shape.profile),
          plan_(shape.plan),
          cuts(shape.cuts.begin(), shape.cuts.end()) {
        const auto add = [&](const Polygon& polygon, bool of_profile) {
            const auto& p = polygon.points();
            for (size_t i = 0; i < p.size(); ++i) {
                const Vector2d step = p[(i + 1) % p.size()] - p[i];
                const double length = step.norm();
                if (length == 0) continue;
                const Vector2d along = step / length;
                patches.push_back({p[i], along, {-along.y(), along.x()}, length, of_profile});
            }
        };
        add(profile_, true);
        add(plan_, false);
    }

    const Stock stock;

private:
    Polygon profile_, plan_;

public:
    std::vector<Convex> cuts;
    std::vector<Patch> patches;

    const std::vector<Rectangle>& section(double x) const {
        stock.section(x, rectangles_);
        return rectangles_;
    }
    bool in_body(const Vector3d& p) const {
        for (const auto& r : section(p.x()))
            if (p.y() >= r.y0 - meeting && p.y() <= r.y1 + meeting && p.z() >= r.z0 - meeting &&
                p.z() <= r.z1 + meeting) {
                const auto corner = in_corner(r, p.y(), p.z());
                return !corner || corner->arm.norm() <= r.r + meeting;
            }
        return false;
    }
    /// Whether wood borders on a surface point of a cut: in the body, and not inside another cut.
    bool borders(size_t cut, const Vector3d& p) const {
        if (!in_body(p)) return false;
        for (size_t j = 0; j < cuts.size(); ++j)
            if (j != cut && cuts[j].nearest(p) == p) return false;
        return true;
    }
    /// Whether the foot of the perpendicular from p lies on the patch.
    bool stands_on(const Patch& patch, const Vector3d& p, double distance) const {
        const Vector2d view = patch.of_profile ? side_view(p) : top_view(p);
        const double t = patch.along.dot(view - patch.from);
        if (t < -meeting || t > patch.length + meeting) return false;
        const Vector3d foot = p - distance * patch.normal();
        const double v = patch.of_profile ? foot.y() : foot.z();
        const Polygon& other = patch.of_profile ? plan_ : profile_;
        const Vector2d seen(foot.x(), v);
        return other.inside(seen) || (other.nearest(seen) - seen).norm() < meeting;
    }

private:
    mutable std::vector<Rectangle> rectangles_;
};

/// A cut's surface, sampled once.
struct Sample {
    Vector3d at;
    size_t face;
    bool borders;
};

class Search {
public:
    Search(const Body& body, size_t cut) : body_(body), cut_(cut), faces_(faces(body.cuts[cut])) {
        for (size_t f = 0; f < faces_.size(); ++f) {
            Eigen::AlignedBox3d box;
            for (int i = 0; i <= grid; ++i)
                for (int j = 0; j <= grid; ++j) {
                    const Vector3d p = faces_[f].at(double(i) / grid, double(j) / grid);
                    samples_.push_back({p, f, body.borders(cut, p)});
                    box.extend(p);
                }
            spacing_.push_back(box.diagonal().norm() / grid);
        }
    }

    Wall operator()() {
        // Nearest planes first: the search ends where even the plane is farther than the wall found.
        std::vector<std::pair<double, const Patch*>> order;
        for (const auto& patch : body_.patches)
            order.emplace_back(patch.distance(own().farthest(-patch.normal())), &patch);
        std::sort(order.begin(), order.end());
        for (const auto& [nearest, patch] : order) {
            if (nearest >= least_.thickness) break;
            to_patch(*patch, nearest);
        }
        if (body_.stock.rounded()) to_corners();
        for (size_t j = 0; j < body_.cuts.size(); ++j)
            if (j != cut_) to_cut(j);
        return least_;
    }

private:
    static constexpr int grid = 8;
    static constexpr double fine = 1e-5; ///< of a face: a micrometre at most

    const Convex& own() const { return body_.cuts[cut_]; }

    /// Refines the least of `distance(p)`, infinite where a point doesn't count, over the faces whose samples
    /// come near enough to matter.
    template <class F, class Place>
    void refine(F&& distance, int beyond, Place&& opposite) {
        std::vector<double> coarse(faces_.size(), endless);
        for (const auto& s : samples_)
            if (s.borders) coarse[s.face] = std::min(coarse[s.face], distance(s.at));
        for (size_t f = 0; f < faces_.size(); ++f) {
            if (!(coarse[f] - spacing_[f] < least_.thickness)) continue;
            const auto best = greatest(
                [&](double u, double v) {
                    const Vector3d p = faces_[f].at(u, v);
                    const double d = distance(p);
                    return d < endless && body_.borders(cut_, p) ? -d : -endless;
                },
                grid, fine);
            if (-best.value < least_.thickness) {
                const Vector3d at = faces_[f].at(best.u, best.v);
                least_ = {-best.value, beyond, at, opposite(at)};
            }
        }
    }

    /// `nearest` is how near the cut comes to the patch's plane, negative past it.
    void to_patch(const Patch& patch, double nearest) {
        const auto signed_distance = [&](const Vector3d& p) {
            const double d = patch.distance(p);
            return body_.stands_on(patch, p, d) ? d : endless;
        };
        if (nearest <= meeting) {
            // It reaches past this face's plane: past the face itself?
            for (const auto& s : samples_)
                if (patch.distance(s.at) <= meeting && signed_distance(s.at) < endless) return;
            for (const auto& face : faces_)
                if (greatest([&](double u, double v) { return -signed_distance(face.at(u, v)); }, grid)
                        .value >= -meeting)
                    return;
        }
        refine(
            [&](const Vector3d& p) {
                const double d = signed_distance(p);
                return d > 0 ? d : endless;
            },
            Wall::outside,
            [&](const Vector3d& p) -> Vector3d { return p - patch.distance(p) * patch.normal(); });
    }

    /// The rounded edges along the body: a corner counts unless the cut opens into it or beside it.
    void to_corners() {
        std::array<bool, 4> open{};
        for (const auto& s : samples_)
            for (const auto& r : body_.section(s.at.x())) {
                const bool low = s.at.z() <= r.z0 + meeting, high = s.at.z() >= r.z1 - meeting;
                const bool left = s.at.y() <= r.y0 + meeting, right = s.at.y() >= r.y1 - meeting;
                const auto in = in_corner(r, s.at.y(), s.at.z());
                for (const int k : {0, 1, 2, 3})
                    open[k] |= (k / 2 ? high : low) || (k % 2 ? right : left) ||
                               (in && 2 * in->top + in->right == k && in->arm.norm() >= r.r - meeting);
            }
        for (const int k : {0, 1, 2, 3}) {
            if (open[k]) continue;
            const auto gap = [&](double x, double y, double z) {
                const auto in = in_corner(body_.section(x), y, z);
                return in && 2 * in->top + in->right == k ? in->r - in->arm.norm() : endless;
            };
            // The gap within the section, turned to the distance by its slope along x.
            const auto distance = [&](const Vector3d& p) {
                const double here = gap(p.x(), p.y(), p.z()), step = 1e-5;
                if (here == endless) return endless;
                const double before = gap(p.x() - step, p.y(), p.z()),
                             after = gap(p.x() + step, p.y(), p.z());
                const double slope = before < endless && after < endless ? (after - before) / (2 * step) : 0;
                return here / std::hypot(1., slope);
            };
            refine(distance, Wall::outside, [&](const Vector3d& p) -> Vector3d {
                const auto in = in_corner(body_.section(p.x()), p.y(), p.z());
                const Vector2d out = (in->r / in->arm.norm() - 1) * in->arm;
                return p + Vector3d(0, out.x(), out.y());
            });
        }
    }

    void to_cut(size_t j) {
        const Convex& other = body_.cuts[j];
        const auto a = own().bounds(), b = other.bounds();
        if (a.exteriorDistance(b) >= least_.thickness) return;
        const auto apart = [](const Convex& from, const Vector3d& p) { return (p - from.nearest(p)).norm(); };
        const auto other_faces = faces(other);
        const auto meets = [&](const std::vector<Face>& surface, const Convex& from) {
            return std::any_of(surface.begin(), surface.end(), [&](const Face& face) {
                return greatest([&](double u, double v) { return -apart(from, face.at(u, v)); }).value >=
                       -meeting;
            });
        };
        if (!a.intersection(b).isEmpty() && (meets(faces_, other) || meets(other_faces, own()))) return;
        const auto within = [&](const Vector3d& p, const Vector3d& q) {
            return body_.in_body(q) && body_.in_body(0.5 * (p + q));
        };
        refine(
            [&](const Vector3d& p) {
                const Vector3d q = other.nearest(p);
                return within(p, q) ? (p - q).norm() : endless;
            },
            static_cast<int>(j), [&](const Vector3d& p) -> Vector3d { return other.nearest(p); });
        // The same from the other side: the nearest point may be in the middle of a face here, between
        // samples.
        for (const auto& face : other_faces) {
            const auto best = greatest(
                [&](double u, double v) {
                    const Vector3d q = face.at(u, v), p = own().nearest(q);
                    return body_.borders(j, q) && within(p, q) ? -(p - q).norm() : -endless;
                },
                grid, fine);
            if (-best.value < least_.thickness) {
                const Vector3d q = face.at(best.u, best.v);
                least_ = {-best.value, static_cast<int>(j), own().nearest(q), q};
            }
        }
    }

    const Body& body_;
    size_t cut_;
    std::vector<Face> faces_;
    std::vector<Sample> samples_;
    std::vector<double> spacing_; ///< of each face's samples
    Wall least_;
};

} // namespace

std::vector<Wall> walls(const BodyShape& shape) {
    const Body body(shape);
    std::vector<Wall> result;
    for (size_t i = 0; i < body.cuts.size(); ++i)
        result.push_back(body.cuts[i].moments().volume > 0 ? Search(body, i)() : Wall{});
    return result;
}

} // namespace rampwright

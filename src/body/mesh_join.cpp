#include "body/mesh_parts.hpp"

#include <Eigen/Geometry>
#include <queue>

#include <algorithm>

namespace rampwright::body_detail {

namespace {

using Eigen::Vector3d;

/// The sum of squared distances from planes, as a quadratic function of place.
struct Quadric {
    Eigen::Matrix3d a = Eigen::Matrix3d::Zero();
    Vector3d b = Vector3d::Zero();
    double c = 0;

    void add_plane(const Vector3d& normal, double offset) {
        a += normal * normal.transpose();
        b -= offset * normal;
        c += offset * offset;
    }
    Quadric& operator+=(const Quadric& other) {
        a += other.a;
        b += other.b;
        c += other.c;
        return *this;
    }
    double at(const Vector3d& p) const { return std::max(0., p.dot(a * p) + 2 * b.dot(p) + c); }
};

/// Edge collapses, cheapest first: a vertex is moved onto a neighbour, so that all stay where they were
/// found.
class Collapser {
public:
    Collapser(Mesh& mesh, double tolerance, double shortest)
        : mesh_(mesh),
          most_(tolerance * tolerance),
          shortest_(shortest * shortest),
          quadrics_(mesh.vertices.size()),
          around_(mesh.vertices.size()),
          stamp_(mesh.vertices.size(), 0),
          alive_(mesh.triangles.size(), 1) {
        for (std::uint32_t t = 0; t < mesh_.triangles.size(); ++t) {
            const Vector3d n = cross(t);
            const auto& corner = mesh_.triangles[t];
            for (const auto v : corner) {
                around_[v].push_back(t);
                if (const double size = n.norm(); size > 0)
                    quadrics_[v].add_plane(n / size, n.dot(mesh_.vertices[corner[0]]) / size);
            }
        }
    }

    void run() {
        for (std::uint32_t v = 0; v < around_.size(); ++v)
            offer(v);
        while (!queue_.empty()) {
            const Candidate next = queue_.top();
            queue_.pop();
            if (stamp_[next.from] != next.from_stamp || stamp_[next.to] != next.to_stamp) continue;
            if (collapses(next.from, next.to)) collapse(next.from, next.to);
        }
        compact();
    }

private:
    struct Candidate {
        double cost;
        std::uint32_t from, to, from_stamp, to_stamp;
        bool operator<(const Candidate& other) const { return cost > other.cost; }
    };

    Vector3d cross(std::uint32_t t) const {
        const auto& [a, b, c] = mesh_.triangles[t];
        const Vector3d& p = mesh_.vertices[a];
        return (mesh_.vertices[b] - p).cross(mesh_.vertices[c] - p);
    }

    void neighbours(std::uint32_t v, std::vector<std::uint32_t>& out) const {
        out.clear();
        for (const auto t : around_[v])
            for (const auto w : mesh_.triangles[t])
                if (w != v) out.push_back(w);
        std::sort(out.begin(), out.end());
        out.erase(std::unique(out.begin(), out.end()), out.end());
    }

    void offer(std::uint32_t v) {
        neighbours(v, near_);
        for (const auto w : near_) {
            offer(v, w);
            offer(w, v);
        }
    }

    void offer(std::uint32_t from, std::uint32_t to) {
        const Vector3d& p = mesh_.vertices[to];
        const double error = quadrics_[from].at(p) + quadrics_[to].at(p);
        const double length = (p - mesh_.vertices[from]).squaredNorm();
        if (error > most_ && length > shortest_) return;
        // Where nothing is lost, short edges go first: the triangles that are left are better shaped.
        queue_.push({error + 1e-7 * length, from, to, stamp_[from], stamp_[to]});
    }

    /// Whether the surface stays closed, of one skin, and unfolded.
    bool collapses(std::uint32_t from, std::uint32_t to) {
        neighbours(from, near_);
        neighbours(to, others_);
        int common = 0;
        for (const auto v : near_)
            common += std::binary_search(others_.begin(), others_.end(), v);
        if (common != 2 || near_.size() < 4) return false;
        for (const auto t : around_[from]) {
            auto corner = mesh_.triangles[t];
            if (std::find(corner.begin(), corner.end(), to) != corner.end()) continue;
            const Vector3d before = cross(t);
            std::replace(corner.begin(), corner.end(), from, to);
            const Vector3d &a = mesh_.vertices[corner[0]], &b = mesh_.vertices[corner[1]],
                           &c = mesh_.vertices[corner[2]];
            const Vector3d after = (b - a).cross(c - a);
            const double size = after.norm();
            const double longest = std::max({(b - a).norm(), (c - b).norm(), (a - c).norm()});
            const Vector3d &p = mesh_.vertices[from], &q = mesh_.vertices[to];
            // What had no area to speak of has no side to keep.
            if (before.norm() > 1e-9 * longest && (p - q).squaredNorm() > shortest_ &&
                !(after.dot(before) > 0.3 * size * before.norm()))
                return false;
            if (size < 1e-6 * longest && size < before.norm())
                return false; // lower than a micrometre, and worse
        }
        return true;
    }

    void collapse(std::uint32_t from, std::uint32_t to) {
        for (const auto t : around_[from]) {
            auto& corner = mesh_.triangles[t];
            if (std::find(corner.begin(), corner.end(), to) != corner.end()) {
                alive_[t] = 0;
                for (const auto v : corner)
                    if (v != from) std::erase(around_[v], t);
            } else {
                std::replace(corner.begin(), corner.end(), from, to);
                around_[to].push_back(t);
            }
        }
        around_[from].clear();
        quadrics_[to] += quadrics_[from];
        ++stamp_[from];
        ++stamp_[to];
        offer(to);
    }

    void compact() {
        std::vector<std::uint32_t> place(mesh_.vertices.size(), 0);
        std::vector<Vector3d> vertices;
        for (std::uint32_t v = 0; v < around_.size(); ++v) {
            if (around_[v].empty()) continue;
            place[v] = static_cast<std::uint32_t>(vertices.size());
            vertices.push_back(mesh_.vertices[v]);
        }
        std::vector<std::array<std::uint32_t, 3>> triangles;
        for (std::size_t t = 0; t < alive_.size(); ++t)
            if (const auto& [a, b, c] = mesh_.triangles[t]; alive_[t])
                triangles.push_back({place[a], place[b], place[c]});
        mesh_ = {std::move(vertices), std::move(triangles)};
    }

    Mesh& mesh_;
    double most_, shortest_; ///< squared
    std::vector<Quadric> quadrics_;
    std::vector<std::vector<std::uint32_t>> around_;
    std::vector<std::uint32_t> stamp_;
    std::vector<unsigned char> alive_;
    std::priority_queue<Candidate> queue_;
    std::vector<std::uint32_t> near_, others_;
};

} // namespace

void join_triangles(Mesh& mesh, double tolerance, double shortest) {
    Collapser(mesh, tolerance, shortest).run();
}

} // namespace rampwright::body_detail

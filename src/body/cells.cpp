#include "body/cells.hpp"

#include <algorithm>

namespace rampwright::body_detail {

using Eigen::Vector2d;
using Eigen::Vector3d;

std::vector<int> Cells::stack_boxes(std::span<const double> x, const Vector2d& low, const Vector2d& high) {
    const std::array<Vector2d, 4> at{low, Vector2d(high.x(), low.y()), high, Vector2d(low.x(), high.y())};
    std::vector<int> numbers;
    const int first = static_cast<int>(corners_.size());
    const auto corner = [first](std::size_t i, int k) { return first + 4 * static_cast<int>(i) + k % 4; };
    for (const double each : x)
        for (const Vector2d& yz : at)
            corners_.emplace_back(each, yz.x(), yz.y());
    for (std::size_t i = 0; i + 1 < x.size(); ++i) {
        numbers.push_back(static_cast<int>(cells_.size()));
        cells_.emplace_back();
    }
    for (std::size_t i = 0; i < x.size(); ++i)
        add_face({corner(i, 0), corner(i, 1), corner(i, 2), corner(i, 3)}, i > 0 ? numbers[i - 1] : air,
                 i + 1 < x.size() ? numbers[i] : air);
    for (std::size_t i = 0; i + 1 < x.size(); ++i)
        for (int k = 0; k < 4; ++k)
            add_face({corner(i, k), corner(i, k + 1), corner(i + 1, k + 1), corner(i + 1, k)}, numbers[i],
                     air);
    return numbers;
}

int Cells::add_face(std::vector<int> ring, int back, int front) {
    const int number = static_cast<int>(faces_.size());
    for (std::size_t i = 0; i < ring.size(); ++i)
        edges_[edge(ring[i], ring[(i + 1) % ring.size()])].push_back(number);
    faces_.push_back({std::move(ring), back, front});
    for (const int cell : {back, front})
        if (cell != air) cells_[static_cast<std::size_t>(cell)].push_back(number);
    return number;
}

int Cells::side(int corner, const Plane& plane) {
    side_.resize(corners_.size(), {0, 0});
    auto& [cut, value] = side_[static_cast<std::size_t>(corner)];
    if (cut != cut_) {
        const double at = plane.at(corners_[static_cast<std::size_t>(corner)]);
        cut = cut_;
        value = static_cast<std::int8_t>(at > hair_ ? 1 : at < -hair_ ? -1 : 0);
    }
    return value;
}

void Cells::split_edge(int a, int b, const Plane& plane) {
    const auto found = edges_.find(edge(a, b));
    const std::vector<int> around = std::move(found->second);
    edges_.erase(found);
    const Vector3d &p = corners_[static_cast<std::size_t>(a)], &q = corners_[static_cast<std::size_t>(b)];
    const double from = plane.at(p), to = plane.at(q);
    const Vector3d place = p + from / (from - to) * (q - p);
    const int middle = static_cast<int>(corners_.size());
    corners_.push_back(place);
    side_.emplace_back(cut_, std::int8_t{0});
    for (const int f : around) {
        std::vector<int>& ring = faces_[static_cast<std::size_t>(f)].ring;
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const int here = ring[i], next = ring[(i + 1) % ring.size()];
            if ((here == a && next == b) || (here == b && next == a)) {
                ring.insert(ring.begin() + static_cast<std::ptrdiff_t>(i) + 1, middle);
                break;
            }
        }
    }
    edges_[edge(a, middle)] = around;
    edges_[edge(middle, b)] = around;
}

/// Divides a face whose corners lie on both sides of the present cut, and whose edges are split already: the
/// face keeps what lies inside; what lies outside is a new face. @return its number.
int Cells::split_face(int number) {
    std::vector<int> ring = faces_[static_cast<std::size_t>(number)].ring;
    const auto value = [&](std::size_t i) {
        return side_[static_cast<std::size_t>(ring[i % ring.size()])].second;
    };
    // Begin where the ring comes from the inside to the cut.
    const std::size_t n = ring.size();
    std::size_t begin = n;
    int changes = 0, last = 0;
    for (std::size_t i = 0; i < 2 * n; ++i) {
        const int now = value(i);
        if (now == 0) continue;
        if (last != 0 && now != last && i >= n) {
            ++changes;
            if (now > 0) begin = i;
        }
        last = now;
    }
    if (changes != 2) throw CellTrouble{};
    // `begin` is the first corner outside; before it stands the corner on the cut.
    std::rotate(ring.begin(), ring.begin() + static_cast<std::ptrdiff_t>((begin + n - 1) % n), ring.end());
    std::size_t end = 1; // the first corner on the cut after the outside ones
    while (end < n && !(value(end) == 0 && value(end + 1) <= 0))
        ++end;
    if (value(0) != 0 || end >= n || end < 2) throw CellTrouble{};

    std::vector<int> outside(ring.begin(), ring.begin() + static_cast<std::ptrdiff_t>(end) + 1);
    std::vector<int> inside(ring.begin() + static_cast<std::ptrdiff_t>(end), ring.end());
    inside.push_back(ring.front());
    if (inside.size() < 3 || edges_.count(edge(outside.front(), outside.back())) != 0) throw CellTrouble{};

    const int made = static_cast<int>(faces_.size());
    for (std::size_t i = 0; i + 1 < outside.size(); ++i) {
        std::vector<int>& around = edges_[edge(outside[i], outside[i + 1])];
        std::replace(around.begin(), around.end(), number, made);
    }
    edges_[edge(outside.front(), outside.back())] = {number, made};
    Face& face = faces_[static_cast<std::size_t>(number)];
    face.ring = std::move(inside);
    Face other{std::move(outside), face.back, face.front};
    for (const int cell : {other.back, other.front})
        if (cell != air) cells_[static_cast<std::size_t>(cell)].push_back(made);
    faces_.push_back(std::move(other));
    return made;
}

/// The ring that closes the faces inside the present cut, counter-clockwise seen from outside of it.
std::vector<int> Cells::cap_ring(int cell, const std::vector<int>& faces) const {
    std::vector<std::pair<int, int>> steps;
    for (const int f : faces) {
        const Face& face = faces_[static_cast<std::size_t>(f)];
        const std::size_t n = face.ring.size();
        for (std::size_t i = 0; i < n; ++i) {
            int a = face.ring[i], b = face.ring[(i + 1) % n];
            if (side_[static_cast<std::size_t>(a)].second != 0 ||
                side_[static_cast<std::size_t>(b)].second != 0)
                continue;
            if (face.front == cell) std::swap(a, b);
            // An edge between two faces inside, both on the cut, is no edge of the cap.
            const auto back = std::find(steps.begin(), steps.end(), std::pair(a, b));
            if (back != steps.end())
                steps.erase(back);
            else
                steps.emplace_back(b, a);
        }
    }
    if (steps.size() < 3) throw CellTrouble{};
    std::sort(steps.begin(), steps.end());
    std::vector<int> ring{steps.front().first};
    for (std::size_t k = 0; k < steps.size(); ++k) {
        const auto next = std::lower_bound(steps.begin(), steps.end(), std::pair(ring.back(), -1));
        if (next == steps.end() || next->first != ring.back()) throw CellTrouble{};
        ring.push_back(next->second);
        if (next->second == ring.front()) break;
    }
    if (ring.back() != ring.front() || ring.size() != steps.size() + 1) throw CellTrouble{};
    ring.pop_back();
    return ring;
}

Cells::Split Cells::split(int cell, const Plane& plane) {
    ++cut_;
    bool some_inside = false, some_outside = false;
    for (const int f : cells_[static_cast<std::size_t>(cell)])
        for (const int corner : faces_[static_cast<std::size_t>(f)].ring) {
            const int value = side(corner, plane);
            some_inside = some_inside || value < 0;
            some_outside = some_outside || value > 0;
        }
    if (!some_outside) return {cell, air};
    if (!some_inside) return {air, cell};

    std::vector<int> inside, outside;
    const std::vector<int> before = cells_[static_cast<std::size_t>(cell)];
    for (const int f : before) {
        bool in = false, out = false;
        std::vector<std::pair<int, int>> crossed;
        const std::vector<int>& ring = faces_[static_cast<std::size_t>(f)].ring;
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const int a = ring[i], b = ring[(i + 1) % ring.size()];
            const int from = side_[static_cast<std::size_t>(a)].second,
                      to = side_[static_cast<std::size_t>(b)].second;
            in = in || from < 0;
            out = out || from > 0;
            if (from * to < 0) crossed.emplace_back(a, b);
        }
        if (!in && !out) throw CellTrouble{};
        for (const auto& [a, b] : crossed)
            split_edge(a, b, plane);
        if (in && out) outside.push_back(split_face(f));
        (in ? inside : outside).push_back(f);
    }
    std::vector<int> cap = cap_ring(cell, inside);

    const int other = static_cast<int>(cells_.size());
    for (const int f : outside) {
        Face& face = faces_[static_cast<std::size_t>(f)];
        (face.back == cell ? face.back : face.front) = other;
    }
    cells_[static_cast<std::size_t>(cell)] = std::move(inside);
    cells_.push_back(std::move(outside));
    add_face(std::move(cap), cell, other);
    return {cell, other};
}

int Cells::carve(int cell, const ConvexSolid& solid, std::vector<int>& outside) {
    int rest = cell;
    for (const Plane& plane : solid) {
        const Split parts = split(rest, plane);
        if (parts.outside != air) outside.push_back(parts.outside);
        rest = parts.inside;
        if (rest == air) break;
    }
    return rest;
}

bool Cells::may_meet(int cell, const ConvexSolid& solid) const {
    return std::all_of(solid.begin(), solid.end(), [&](const Plane& plane) {
        for (const int f : cells_[static_cast<std::size_t>(cell)])
            for (const int corner : faces_[static_cast<std::size_t>(f)].ring)
                if (plane.at(corners_[static_cast<std::size_t>(corner)]) < -hair_) return true;
        return false;
    });
}

void Cells::forget(int number) {
    Face& face = faces_[static_cast<std::size_t>(number)];
    for (std::size_t i = 0; i < face.ring.size(); ++i) {
        const auto found = edges_.find(edge(face.ring[i], face.ring[(i + 1) % face.ring.size()]));
        if (found == edges_.end()) continue;
        std::erase(found->second, number);
        if (found->second.empty()) edges_.erase(found);
    }
    face.ring.clear();
}

void Cells::give_to_air(int cell) {
    for (const int f : cells_[static_cast<std::size_t>(cell)]) {
        Face& face = faces_[static_cast<std::size_t>(f)];
        (face.back == cell ? face.back : face.front) = air;
        if (face.dead()) forget(f);
    }
    cells_[static_cast<std::size_t>(cell)].clear();
}

std::vector<std::vector<int>> Cells::surface() const {
    std::vector<std::vector<int>> rings;
    for (const Face& face : faces_) {
        if ((face.back == air) == (face.front == air)) continue;
        rings.push_back(face.ring);
        if (face.back == air) std::reverse(rings.back().begin(), rings.back().end());
    }
    return rings;
}

Vector3d Cells::middle(int cell) const {
    Vector3d sum = Vector3d::Zero();
    int count = 0;
    for (const int f : cells_[static_cast<std::size_t>(cell)])
        for (const int corner : faces_[static_cast<std::size_t>(f)].ring) {
            sum += corners_[static_cast<std::size_t>(corner)];
            ++count;
        }
    return sum / std::max(1, count);
}

} // namespace rampwright::body_detail

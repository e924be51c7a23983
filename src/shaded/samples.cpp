#include "shaded/samples.hpp"

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

/// Calls `visit(index, w0, w1, w2)` for each sample inside a triangle of the plane, with its barycentric
/// weights.
template <class Visit>
void cover(const Eigen::Vector3f& a, const Eigen::Vector3f& b, const Eigen::Vector3f& c, int width,
           int height, Visit visit) {
    const float area = (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    if (area == 0) return;
    const auto limit = [](float value, int most) {
        return static_cast<int>(std::clamp(value, 0.f, static_cast<float>(most)));
    };
    const int x0 = limit(std::floor(std::min({a.x(), b.x(), c.x()})), width);
    const int x1 = limit(std::ceil(std::max({a.x(), b.x(), c.x()})), width);
    const int y0 = limit(std::floor(std::min({a.y(), b.y(), c.y()})), height);
    const int y1 = limit(std::ceil(std::max({a.y(), b.y(), c.y()})), height);
    const float inverse = 1 / area;
    const float step1 = (c.y() - a.y()) * inverse, step2 = (a.y() - b.y()) * inverse;
    constexpr float slack = -1e-5f; // neighbours may overlap by a hair, but leave no gap
    for (int y = y0; y < y1; ++y) {
        const float py = static_cast<float>(y) + 0.5f - a.y();
        const float row1 = py * (a.x() - c.x()) * inverse, row2 = py * (b.x() - a.x()) * inverse;
        for (int x = x0; x < x1; ++x) {
            const float px = static_cast<float>(x) + 0.5f - a.x();
            const float w1 = px * step1 + row1, w2 = px * step2 + row2;
            if (w1 < slack || w2 < slack || w1 + w2 > 1 - slack) continue;
            visit(static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x),
                  1 - w1 - w2, w1, w2);
        }
    }
}

/// A running mean along rows or columns.
void blur(std::vector<float>& image, int length, int lines, std::size_t along, std::size_t across,
          int reach) {
    std::vector<float> line(static_cast<std::size_t>(length));
    for (int k = 0; k < lines; ++k) {
        float* const first = image.data() + static_cast<std::size_t>(k) * across;
        for (int i = 0; i < length; ++i)
            line[static_cast<std::size_t>(i)] = first[static_cast<std::size_t>(i) * along];
        float sum = 0;
        for (int i = -reach; i < length; ++i) {
            if (i + reach < length) sum += line[static_cast<std::size_t>(i + reach)];
            if (i > reach) sum -= line[static_cast<std::size_t>(i - reach - 1)];
            if (i >= 0) first[static_cast<std::size_t>(i) * along] = sum / static_cast<float>(2 * reach + 1);
        }
    }
}

} // namespace

void draw(const LitSurface& surface, std::int16_t solid, const Projection& projection, Samples& samples) {
    std::vector<Eigen::Vector3f> seen(surface.mesh.vertices.size());
    std::transform(surface.mesh.vertices.begin(), surface.mesh.vertices.end(), seen.begin(), projection);
    for (std::size_t t = 0; t < surface.mesh.triangles.size(); ++t) {
        const auto& [ia, ib, ic] = surface.mesh.triangles[t];
        const Eigen::Vector3f &a = seen[ia], &b = seen[ib], &c = seen[ic];
        // Rows run downward, so that what faces the viewer turns clockwise here.
        if ((b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x()) >= 0) continue;
        const auto& normals = surface.normals[t];
        cover(a, b, c, samples.width, samples.height, [&](std::size_t at, float wa, float wb, float wc) {
            const float depth = wa * a.z() + wb * b.z() + wc * c.z();
            Sample& sample = samples.at[at];
            if (depth <= sample.depth) return;
            sample.depth = depth;
            sample.solid = solid;
            sample.normal = wa * normals[0] + wb * normals[1] + wc * normals[2];
        });
    }
}

std::vector<float> ground_shadow(const Scene& scene, const Projection& pixels, int width, int height) {
    std::vector<float> shadow(static_cast<std::size_t>(width) * static_cast<std::size_t>(height), 0);
    for (const SceneSolid& solid : scene.solids) {
        std::vector<Eigen::Vector3f> seen;
        for (const Vec3& p : solid.surface->mesh.vertices)
            seen.push_back(pixels({p.x(), p.y(), scene.ground}));
        for (const auto& [a, b, c] : solid.surface->mesh.triangles)
            cover(seen[a], seen[b], seen[c], width, height,
                  [&](std::size_t at, float, float, float) { shadow[at] = 1; });
    }
    // Three running means are close to a bell.
    const int reach = std::max(1, static_cast<int>(pixels.scale * 4e-3f));
    for (int pass = 0; pass < 3; ++pass) {
        blur(shadow, width, height, 1, static_cast<std::size_t>(width), reach);
        blur(shadow, height, width, static_cast<std::size_t>(width), 1, std::max(1, reach / 2));
    }
    return shadow;
}

std::vector<std::uint8_t> find_edges(const Samples& samples, float step) {
    std::vector<std::uint8_t> edge(samples.at.size(), 0);
    constexpr float turned = 0.8f; // cosine: a crease of 37 degrees and more
    const auto compare = [&](std::size_t i, std::size_t j) {
        const Sample &a = samples.at[i], &b = samples.at[j];
        if (a.solid == Sample::nothing && b.solid == Sample::nothing) return;
        const bool same = a.solid == b.solid && std::abs(a.depth - b.depth) < step;
        if (same && a.normal.dot(b.normal) > turned * a.normal.norm() * b.normal.norm()) return;
        edge[a.depth >= b.depth ? i : j] = 1; // the nearer one carries the line
    };
    const auto w = static_cast<std::size_t>(samples.width), h = static_cast<std::size_t>(samples.height);
    for (std::size_t y = 0; y < h; ++y)
        for (std::size_t x = 0; x < w; ++x) {
            if (x + 1 < w) compare(y * w + x, y * w + x + 1);
            if (y + 1 < h) compare(y * w + x, (y + 1) * w + x);
        }
    return edge;
}

} // namespace rampwright

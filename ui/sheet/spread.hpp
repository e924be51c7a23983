#pragma once

#include <vector>

namespace rampwright::ui::paper {

/// A label that wants to stand at a place along a strip and takes some room there; mm.
struct Label {
    double at = 0, size = 0;
    double placed = 0; ///< where its middle comes to stand
    int row = 0;       ///< 0 is nearest to what it labels
};

/// Moves labels apart along a strip from `low` to `high` as little as needed to leave `gap` between them.
/// Where they do not all fit side by side they take turns in several rows. @return the number of rows.
int spread(std::vector<Label>& labels, double low, double high, double gap);

} // namespace rampwright::ui::paper

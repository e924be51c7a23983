#pragma once

#include "body/convex.hpp"
#include "body/stock.hpp"

#include <span>

namespace rampwright::body_detail {

/// Moments of `base`, as far as it lies in every one of `within`, in the uncut body if there is one, and -
/// where `any_of` isn't empty - in at least one of `any_of`.
struct Region {
    const Convex& base;
    std::span<const Convex> within{};
    const Stock* stock = nullptr;
    std::span<const Convex> any_of{};
};
Moments integrate(const Region& region);

} // namespace rampwright::body_detail

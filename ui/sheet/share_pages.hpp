#pragma once

#include <cstddef>
#include <vector>

namespace rampwright::ui::paper {

/// How many of these, in order, stand on each page when every page is filled before the next; one that is
/// higher than a page has one for itself.
/// @param first room on the first page; `room` on those that follow.
std::vector<std::size_t> fill_pages(const std::vector<double>& heights, double first, double room);

/// The same number of pages, but where the last would hold less than two fifths of a page, the fullest page
/// is as empty as can be: a continuation for a few lines is a page that gets lost.
std::vector<std::size_t> share_pages(const std::vector<double>& heights, double first, double room);

} // namespace rampwright::ui::paper

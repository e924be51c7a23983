#pragma once

#include <cstddef>
#include <functional>

namespace rampwright {

/// Shares work on the indices below `count` out to threads, `chunk` of them at a time.
/// @param work called from several threads at once with a range of indices; must not throw. Made anew for
/// each
///        thread by `make_work`, which gives it room of its own.
/// @param keep_going called now and then from the calling thread with the part done; false stops. May be
/// empty.
/// @returns whether everything was done.
bool share_out(std::size_t count, std::size_t chunk, unsigned threads,
               const std::function<bool(double)>& keep_going,
               const std::function<std::function<void(std::size_t from, std::size_t to)>()>& make_work);

} // namespace rampwright

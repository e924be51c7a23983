#include "share_out.hpp"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <condition_variable>
#include <mutex>
#include <thread>
#include <vector>

namespace rampwright {

bool share_out(std::size_t count, std::size_t chunk, unsigned threads,
               const std::function<bool(double)>& keep_going,
               const std::function<std::function<void(std::size_t, std::size_t)>()>& make_work) {
    std::atomic<std::size_t> next{0};
    std::atomic<bool> stop{false};
    std::mutex mutex;
    std::condition_variable ended;
    unsigned running = threads ? threads : std::max(1u, std::thread::hardware_concurrency());
    std::vector<std::jthread> workers;
    const auto take_chunks = [&] {
        const auto work = make_work();
        for (std::size_t from; !stop && (from = next.fetch_add(chunk)) < count;)
            work(from, std::min(from + chunk, count));
        const std::lock_guard lock(mutex);
        --running;
        ended.notify_one();
    };
    const unsigned started = running;
    for (unsigned n = 0; n < started; ++n)
        workers.emplace_back(take_chunks);
    std::unique_lock lock(mutex);
    while (running > 0) {
        ended.wait_for(lock, std::chrono::milliseconds(30));
        const double part = std::min(1.0, double(next) / double(std::max<std::size_t>(1, count)));
        if (keep_going && !keep_going(part)) stop = true;
    }
    lock.unlock();
    return !stop;
}

} // namespace rampwright

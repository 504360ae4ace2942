#pragma once

#include <algorithm>
#include <cstddef>
#include <thread>
#include <vector>

/// Work on many items of which each stands alone, on every core. Private to core/book.
namespace groundcount::book {

/// Calls `work(from, to)` for adjoining ranges that cover 0 to `count`, each on a thread of its own; the last on this one.
/// @param work touches nothing that another range touches, and throws nothing
/// @param atLeast items that are worth a thread
template <class Work>
void inRanges(std::size_t count, std::size_t atLeast, const Work& work)
{
    const std::size_t cores = std::max(1U, std::thread::hardware_concurrency());
    const std::size_t ranges = std::clamp<std::size_t>(count / std::max<std::size_t>(1, atLeast), 1, cores);
    std::vector<std::thread> threads;
    for (std::size_t i = 0; i + 1 < ranges; ++i)
        threads.emplace_back([&work, i, count, ranges] { work(count * i / ranges, count * (i + 1) / ranges); });
    work(count * (ranges - 1) / ranges, count);
    for (std::thread& thread : threads)
        thread.join();
}

}  // namespace groundcount::book

// SPDX-License-Identifier: MIT
#include "core/prints/on_all_cores.h"

#include <algorithm>
#include <atomic>
#include <thread>
#include <vector>

namespace matwright {

void onAllCores(std::size_t count, const std::function<void(std::size_t)>& work, unsigned workers) {
    const std::size_t wanted =
        workers > 0 ? workers : std::max(1U, std::thread::hardware_concurrency());
    std::atomic<std::size_t> next = 0;
    const auto run = [&] {
        for (std::size_t i = next++; i < count; i = next++) {
            work(i);
        }
    };
    std::vector<std::jthread> others;
    for (std::size_t n = 1; n < std::min(wanted, count); ++n) {
        others.emplace_back(run);
    }
    run();
}

}  // namespace matwright

// SPDX-License-Identifier: MIT
#include "core/prints/on_all_cores.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <thread>
#include <vector>

#include "core/prints/within_memory.h"

namespace matwright {

Result<void> onAllCores(std::size_t count, const std::function<void(std::size_t)>& work,
                        unsigned workers) {
    const std::size_t wanted =
        workers > 0 ? workers : std::max(1U, std::thread::hardware_concurrency());
    std::atomic<std::size_t> next = 0;
    std::mutex failing;
    Result<void> outcome;
    const auto run = [&] {
        for (std::size_t i = next++; i < count; i = next++) {
            const Result<void> done = withinMemory([&]() -> Result<void> {
                work(i);
                return {};
            });
            const std::scoped_lock lock(failing);
            if (!done && outcome) {
                outcome = done;
            }
        }
    };
    {
        std::vector<std::jthread> others;
        const auto hasStarted = [&] {
            try {
                others.emplace_back(run);
                return true;
            } catch (const std::exception&) {  // the system has no more threads, or memory for one
                return false;
            }
        };
        for (std::size_t n = 1; n < std::min(wanted, count) && hasStarted(); ++n) {
        }
        run();
    }
    return outcome;
}

}  // namespace matwright

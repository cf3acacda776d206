// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <span>
#include <stop_token>
#include <vector>

#include "core/library/sketch_reading.h"

namespace matwright {

struct ReadJob {
    const ScannedFile* file = nullptr;
    std::optional<ContentKey> known;  // what it held when it was read last
};
struct ReadResult {
    const ScannedFile* file = nullptr;
    std::optional<IndexReading> reading;  // nothing: it is gone
};

// Reads all files on this thread and `threads` - 1 others, until done or stopped. `collect` is
// called on this thread only, with what was read since it was called last: after each file this
// thread has read, and once at the end.
void readInParallel(const std::filesystem::path& library, std::span<const ReadJob> jobs,
                    int threads, const std::stop_token& stop,
                    const std::function<void(std::vector<ReadResult>)>& collect);

}  // namespace matwright

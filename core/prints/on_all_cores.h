// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <functional>

#include "core/error/error.h"

namespace matwright {

// Calls work(0) .. work(count - 1), each once, on up to `workers` threads at a time (0: as many as
// the machine has cores), and returns when all are done. Where the system starts no more threads,
// those that run do all. A work that throws leaves the others to go on; the first such failure is
// what comes back, as a sentence.
[[nodiscard]] Result<void> onAllCores(std::size_t count,
                                      const std::function<void(std::size_t)>& work,
                                      unsigned workers = 0);

}  // namespace matwright

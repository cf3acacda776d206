// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <functional>

namespace matwright {

// Calls work(0) .. work(count - 1), each once, on up to `workers` threads at a time (0: as many as
// the machine has cores), and returns when all are done. `work` must not throw.
void onAllCores(std::size_t count, const std::function<void(std::size_t)>& work,
                unsigned workers = 0);

}  // namespace matwright

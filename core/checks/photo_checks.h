// SPDX-License-Identifier: MIT
#pragma once

#include "core/checks/checks.h"
#include "core/making/making.h"

namespace matwright {

// What checkSketch() finds, then the prints that will not look sharp (below warnedPpi, see
// photo_words.h), from bottom to top. Without photos the same as checkSketch().
std::vector<CheckFinding> checkMaking(const Making& making, const CheckSettings& settings,
                                      const std::stop_token& stop = {});

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include "core/measure/length.h"

namespace matwright {

// For derived outlines: the ticks as a double, exact within 2^53 ticks (far past the limit of
// coordinates).
constexpr double ticksOf(Length length) {
    return static_cast<double>(length.ticks());
}

}  // namespace matwright

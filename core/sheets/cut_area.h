// SPDX-License-Identifier: MIT
#pragma once

#include "core/measure/rect.h"

namespace matwright {

// An area in square ticks, exact: two sides of 1,000 in need 60 bits.
constexpr std::int64_t areaOf(Size size) {
    return size.width.ticks() * size.height.ticks();
}

}  // namespace matwright

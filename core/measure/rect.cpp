// SPDX-License-Identifier: MIT
#include "core/measure/rect.h"

#include <algorithm>

namespace matwright {

Rect Rect::spanning(Point a, Point b) {
    return {{std::min(a.x, b.x), std::max(a.x, b.x)}, {std::min(a.y, b.y), std::max(a.y, b.y)}};
}

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include "core/raster/raster.h"

namespace matwright {

struct PixelPoint {
    int x = 0;
    int y = 0;
    friend bool operator==(const PixelPoint&, const PixelPoint&) = default;
};

Raster whiteSheet(PixelSize size);
// Copies `picture` onto the sheet; what would lie beyond the sheet is left out.
void lay(Raster& sheet, const Raster& picture, PixelPoint at);
// A quarter turn clockwise.
Raster turnedRight(const Raster& picture);

}  // namespace matwright

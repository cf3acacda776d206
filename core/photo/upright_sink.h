// SPDX-License-Identifier: MIT
#pragma once

#include <stop_token>
#include <vips/vips8>

#include "core/error/error.h"
#include "core/raster/raster.h"

// Internal to core/photo: runs a picture of libvips once, from the top to the bottom.

namespace matwright {

// The size of a picture of that size after an EXIF turn 1 .. 8.
PixelSize uprightSize(PixelSize stored, int orientation);

struct Poured {
    Raster raster;  // empty where it did not come to the end
    int rows = 0;   // of the picture, before it is turned, that came at the least
    bool isWhole = false;
};

// The pixels of `image` (3 bands of 8 bits), turned upright on the way, so that none lies in memory
// twice. Stops soon after `stop` is asked for.
Poured pourUpright(const vips::VImage& image, int orientation, const std::stop_token& stop);

}  // namespace matwright

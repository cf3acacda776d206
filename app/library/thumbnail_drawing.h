// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <string_view>

#include "core/error/error.h"
#include "core/sketch/sketch.h"

namespace matwright::app {

// Count up when thumbnails are to look different, so that no old ones are taken from the disk.
inline constexpr int thumbnailLook = 1;

// The largest size of the page's own proportions that fits into a square of `side` pixels.
QSize pictureSize(const PageSetup& page, int side);

// The sketch as the canvas shows it, on white, in pictureSize(sketch.page, side). May run on any
// thread. `side` is at least 1; sizes written into photos are left out where nobody could read
// them.
QImage thumbnailOf(const Sketch& sketch, int side);

}  // namespace matwright::app

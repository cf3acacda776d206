// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>

#include "core/raster/raster.h"

namespace matwright::app {

// The same pixels in the window's terms; sRGB. A raster without pixels gives a null image.
QImage imageOf(const Raster& raster);
// Any image as a raster; what is transparent is laid on white.
Raster rasterOf(const QImage& image);

}  // namespace matwright::app

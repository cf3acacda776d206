// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <QTransform>

#include "core/crop/crop.h"

namespace matwright::app {

// The way from the pixels of `picture` (a copy of the photo in any size, upright) into a target of
// `target` pixels that stands for the window: for a painter that draws the picture at (0, 0) and
// clips to the target. All sizes are positive.
QTransform cropTransform(const Crop& crop, PixelSize upright, Size window, QSize picture,
                         QSizeF target);

// What shows in the window, no larger than `longSide` pixels (Format_RGB32); smooth.
QImage croppedPicture(const QImage& picture, const Crop& crop, PixelSize upright, Size window,
                      int longSide);

// A part of a window's picture, in fractions of its width from left to right.
QImage shareOf(const QImage& window, double from, double to);

}  // namespace matwright::app

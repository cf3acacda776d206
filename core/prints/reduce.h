// SPDX-License-Identifier: MIT
#pragma once

#include <vips/vips8>

#include "core/raster/raster.h"

namespace matwright {

// A stretch of one axis of a picture, in its pixels (0 is the outer edge of the first), to be shown
// by `pixels` whole pixels.
struct Stretch {
    double start = 0;
    double length = 0;
    int pixels = 0;
    double scale() const { return length / pixels; }
};

// Where an axis is cut so that the library's own grid falls on ours: it resamples about the middle
// of what it is given and gives round(length / scale) pixels. `from` and `count` are the cut (it
// may reach outside of the picture), `skipped` how many of the pixels it then gives lie before
// ours.
struct AxisCut {
    int from = 0;
    int count = 0;
    int skipped = 0;
    double error = 0;  // how far the grid is off, in pixels of the picture
};
// For a scale of 1 or more. The error stays below 0.04 except where the scale is (nearly) a ratio
// of small numbers, 1 above all; then it is at most half a pixel, which is 0.04 mm of a print at
// 300 ppi.
AxisCut cutFor(const Stretch& stretch);

// The part of the picture from `left` and `top`, its edge repeated where it reaches outside.
vips::VImage cutOut(const vips::VImage& picture, int left, int top, int width, int height);

// The part `across` x `down` of a picture as across.pixels x down.pixels, resampled once an axis:
// smaller with a Lanczos kernel of three lobes, larger with the library's bicubic interpolation
// (it has no Lanczos there). Where the part reaches outside, the picture's edge is repeated.
vips::VImage resampled(const vips::VImage& picture, const Stretch& across, const Stretch& down);

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include <stop_token>

#include "core/crop/crop.h"
#include "core/error/error.h"
#include "core/making/making.h"
#include "core/prints/pixel_places.h"

namespace matwright {

// What of a photo fills which pixels: the part of `window` between `from` and `to` fills `shown`
// exactly, and the picture runs on over `picture`, which holds it.
struct PhotoView {
    Crop crop;
    Size window;
    double from = 0;
    double to = 1;
    PixelRect shown;
    PixelRect picture;
};

// The pixels of `picture`, from the photo's file as it is now (its own size counts, not what was
// once told of it); NotFound where that holds another picture than the photo's. Resampled once, in
// the photo's own gamma-encoded colours, which then become sRGB. A photo to be straightened is
// turned at its own resolution first. Decoders that can give a smaller picture at once are asked
// for one, as long as it is still shrunkEnough times larger than what is wanted. Errors as
// decodePhoto().
Result<Raster> photoPixels(const Photo& photo, const PhotoView& view, std::stop_token stop);

// How far the decoder may shrink: 1, 2, 4 or 8, for a photo to be shown at 1 / `scale` of its size.
int decoderShrink(double scale);
inline constexpr double shrunkEnough = 1.2;

}  // namespace matwright

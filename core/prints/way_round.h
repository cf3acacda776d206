// SPDX-License-Identifier: MIT
#pragma once

#include <vips/vips8>

#include "core/raster/raster.h"

namespace matwright {

// A part of a picture in its pixels, from the outer edge of its first.
struct PixelPart {
    double left = 0;
    double top = 0;
    double width = 0;
    double height = 0;
};

// How a stored picture is turned until it lies as it is shown: mirrored left to right or not, then
// turned clockwise by quarters.
struct WayRound {
    bool mirrored = false;
    int quarters = 0;  // 0 .. 3
    friend bool operator==(const WayRound&, const WayRound&) = default;
};
// Of an EXIF orientation, 1 .. 8 (as tiff:Orientation of the XMP specification; 5 is "mirrored,
// then 270 degrees clockwise"), and quarter turns after it.
WayRound wayRound(int orientation, int quarterTurns);

PixelSize turned(const WayRound& way, PixelSize stored);
// The part of the stored picture that is shown as `shown` once it is turned, and the way back.
// Exact.
PixelPart storedPart(const WayRound& way, const PixelPart& shown, PixelSize stored);
PixelPart shownPart(const WayRound& way, const PixelPart& inStored, PixelSize stored);
// Turns the pixels; exact. Not for a picture that can be read once only.
vips::VImage turned(const WayRound& way, const vips::VImage& picture);

}  // namespace matwright

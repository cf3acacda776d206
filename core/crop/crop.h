// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

#include "core/measure/angle.h"
#include "core/measure/rect.h"
#include "core/raster/raster.h"

namespace matwright {

// Which part of a photo shows in its window, kept free of pixels and inches: it holds when the
// photo is replaced by a larger copy, when the window changes its size, and when the photo is not
// there. (A window is what shows of the print in the end: the trim, less a white border.)
//
// The photo is taken upright (its EXIF turn already done), then turned by whole quarters, then by
// `straighten` about its own middle. The shown part is an upright rectangle of the window's ratio
// that never reaches outside the turned photo. At zoom 1 it is the largest such rectangle.
struct Crop {
    static constexpr std::int32_t one = 1'000'000;
    static constexpr std::int32_t largestZoom = 50 * one;

    // The middle of the shown part, in millionths of the width and height of the photo as it lies
    // after its quarter turns: 0 .. one.
    std::int32_t centreX = one / 2;
    std::int32_t centreY = one / 2;
    // How many times larger than at its smallest the photo is shown, in millionths: one ..
    // largestZoom.
    std::int32_t zoom = one;
    int quarterTurns = 0;                  // clockwise: 0 .. 3
    Angle straighten = Angle::degrees(0);  // clockwise; 0 .. 45 degrees or 315 .. below 360

    friend bool operator==(const Crop&, const Crop&) = default;
};

// Whether every member is in its range.
bool isSound(const Crop& crop);

// The shown part in pixels of the photo after its quarter turns (origin at the top left corner of
// its top left pixel). A rectangle of `width` x `height` about (centreX, centreY), turned by
// -straighten against the photo: it is upright in the window.
struct CropWindow {
    double centreX = 0;
    double centreY = 0;
    double width = 0;
    double height = 0;
    double radians = 0;  // of straighten, clockwise, between -pi/4 and pi/4
};

// Where the point (u, v) of the window lies in the photo, in the same pixels; (0, 0) is the
// window's top left corner, (1, 1) its bottom right one. Defined outside of the window too.
struct PhotoPoint {
    double x = 0;
    double y = 0;
};
PhotoPoint photoPointAt(const CropWindow& window, double u, double v);

// `upright` is the photo's size after its EXIF turn and before its quarter turns; both sizes are
// positive. The answer lies inside the photo (to 1e-6 of a pixel), whatever the centre was: a
// centre too near to an edge is moved in by the least.
CropWindow windowIn(const Crop& crop, PixelSize upright, Size window);

// The crop with its centre where windowIn() has it, rounded to a millionth: what is worth keeping.
Crop settled(const Crop& crop, PixelSize upright, Size window);

// Where a crop begins: zoom 1, in the middle from side to side. Of a photo that is taller in
// proportion than the window a third of the loss is taken above and two thirds below, because heads
// are in the upper part. Never turned.
Crop startingCrop(PixelSize upright, Size window);

// The photo's size after its quarter turns.
PixelSize turnedSize(const Crop& crop, PixelSize upright);

// The crop after the photo was dragged by this much in the window (page lengths, right and down
// positive), begun at `start`. It stops at the photo's edges.
Crop dragged(const Crop& start, PixelSize upright, Size window, Point by);
// Zoomed by `factor` about a point of the window (from its middle, right and down positive), which
// keeps its place as far as the edges allow. factor > 0.
Crop zoomedAbout(const Crop& start, PixelSize upright, Size window, double factor, Point about);
// The same middle with another straightening angle, within +-45 degrees.
Crop straightened(const Crop& start, PixelSize upright, Size window, Angle angle);
// A quarter turn to the right; what was in the middle stays there as far as the edges allow, and
// the zoom is the same number of what is largest now.
Crop turnedRight(const Crop& start, PixelSize upright, Size window);

// Photo pixels an inch of print: how finely it comes out. The window's own ratio makes it equal in
// both directions.
double effectivePpi(const Crop& crop, PixelSize upright, Size window);

// The part of the photo's area that does not show, 0 .. below 1.
double lossOf(const Crop& crop, PixelSize upright, Size window);

}  // namespace matwright

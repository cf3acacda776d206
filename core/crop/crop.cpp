// SPDX-License-Identifier: MIT
#include "core/crop/crop.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace matwright {

namespace {

constexpr int fullTurn = 360'000;  // millidegrees
constexpr int largestStraighten = 45'000;

// -180,000 .. below 180,000
int signedMillidegrees(Angle angle) {
    const int n = angle.toMillidegrees();
    return n < fullTurn / 2 ? n : n - fullTurn;
}

struct Vector {
    double x = 0;
    double y = 0;
};

// A step in the window, in photo pixels, as a step along the photo's own sides.
Vector alongPhoto(Angle straighten, Vector inWindow) {
    const double c = straighten.cosine();
    const double s = straighten.sine();
    return {inWindow.x * c + inWindow.y * s, inWindow.y * c - inWindow.x * s};
}

// Half of what an upright rectangle of this size takes of either side of the photo that is turned
// beneath it.
Vector halfExtent(Angle straighten, double width, double height) {
    const double c = std::abs(straighten.cosine());
    const double s = std::abs(straighten.sine());
    return {(width * c + height * s) / 2, (width * s + height * c) / 2};
}

// The nearest place to `centre` where `halfExtent` to either side is within 0 .. side.
double movedIn(double centre, double halfExtent, double side) {
    const double most = side - halfExtent;
    return halfExtent < most ? std::clamp(centre, halfExtent, most) : side / 2;
}

std::int32_t millionths(double part, double whole) {
    const double share = std::clamp(part / whole, 0.0, 1.0);
    return static_cast<std::int32_t>(std::llround(share * Crop::one));
}

Crop withCentre(Crop crop, PixelSize upright, double x, double y) {
    const PixelSize photo = turnedSize(crop, upright);
    crop.centreX = millionths(x, photo.width);
    crop.centreY = millionths(y, photo.height);
    return crop;
}

}  // namespace

bool isSound(const Crop& crop) {
    const auto isShare = [](std::int32_t n) { return n >= 0 && n <= Crop::one; };
    return isShare(crop.centreX) && isShare(crop.centreY) && crop.zoom >= Crop::one &&
           crop.zoom <= Crop::largestZoom && crop.quarterTurns >= 0 && crop.quarterTurns <= 3 &&
           std::abs(signedMillidegrees(crop.straighten)) <= largestStraighten;
}

PixelSize turnedSize(const Crop& crop, PixelSize upright) {
    return crop.quarterTurns % 2 == 0 ? upright : upright.turned();
}

CropWindow windowIn(const Crop& crop, PixelSize upright, Size window) {
    assert(isSound(crop) && upright.isPositive() && window.isPositive());
    const PixelSize photo = turnedSize(crop, upright);
    // Of a rectangle of the window's ratio and height 1.
    const double ratioOfSides = ratio(window.width, window.height);
    const Vector half = halfExtent(crop.straighten, ratioOfSides, 1);
    const double largestHeight = std::min(photo.width / half.x, photo.height / half.y) / 2;
    const double height = largestHeight * Crop::one / crop.zoom;
    const auto centreOf = [&](std::int32_t share, int side, double halfOfOne) {
        return movedIn(static_cast<double>(share) * side / Crop::one, halfOfOne * height, side);
    };
    return {centreOf(crop.centreX, photo.width, half.x),
            centreOf(crop.centreY, photo.height, half.y), ratioOfSides * height, height,
            signedMillidegrees(crop.straighten) * (2 * std::numbers::pi / fullTurn)};
}

PhotoPoint photoPointAt(const CropWindow& window, double u, double v) {
    const double x = (u - 0.5) * window.width;
    const double y = (v - 0.5) * window.height;
    const double c = std::cos(window.radians);
    const double s = std::sin(window.radians);
    return {window.centreX + x * c + y * s, window.centreY + y * c - x * s};
}

Crop settled(const Crop& crop, PixelSize upright, Size window) {
    const CropWindow shown = windowIn(crop, upright, window);
    return withCentre(crop, upright, shown.centreX, shown.centreY);
}

Crop startingCrop(PixelSize upright, Size window) {
    const CropWindow shown = windowIn(Crop(), upright, window);
    const double lost = std::max(0.0, upright.height - shown.height);
    return withCentre(Crop(), upright, shown.centreX, lost / 3 + shown.height / 2);
}

Crop dragged(const Crop& start, PixelSize upright, Size window, Point by) {
    const CropWindow shown = windowIn(start, upright, window);
    const double pixels = shown.width / static_cast<double>(window.width.ticks());
    const Vector step = alongPhoto(start.straighten, {static_cast<double>(by.x.ticks()) * pixels,
                                                      static_cast<double>(by.y.ticks()) * pixels});
    return settled(withCentre(start, upright, shown.centreX - step.x, shown.centreY - step.y),
                   upright, window);
}

Crop zoomedAbout(const Crop& start, PixelSize upright, Size window, double factor, Point about) {
    assert(factor > 0);
    const CropWindow before = windowIn(start, upright, window);
    Crop after = start;
    const double zoom = std::clamp<double>(start.zoom * factor, Crop::one, Crop::largestZoom);
    after.zoom = static_cast<std::int32_t>(std::lround(zoom));
    // What the same step in the window was in photo pixels, less what it is now.
    const double change = before.width * (1.0 - static_cast<double>(start.zoom) / after.zoom) /
                          static_cast<double>(window.width.ticks());
    const Vector step =
        alongPhoto(start.straighten, {static_cast<double>(about.x.ticks()) * change,
                                      static_cast<double>(about.y.ticks()) * change});
    return settled(withCentre(after, upright, before.centreX + step.x, before.centreY + step.y),
                   upright, window);
}

Crop straightened(const Crop& start, PixelSize upright, Size window, Angle angle) {
    Crop crop = start;
    const int wanted = signedMillidegrees(angle);
    crop.straighten =
        Angle::millidegrees(std::clamp(wanted, -largestStraighten, largestStraighten));
    return settled(crop, upright, window);
}

Crop turnedRight(const Crop& start, PixelSize upright, Size window) {
    Crop crop = settled(start, upright, window);
    crop.quarterTurns = (crop.quarterTurns + 1) % 4;
    const std::int32_t across = crop.centreX;
    crop.centreX = Crop::one - crop.centreY;
    crop.centreY = across;
    return settled(crop, upright, window);
}

double effectivePpi(const Crop& crop, PixelSize upright, Size window) {
    return windowIn(crop, upright, window).width / window.width.toInches();
}

double lossOf(const Crop& crop, PixelSize upright, Size window) {
    const CropWindow shown = windowIn(crop, upright, window);
    return 1 - shown.width * shown.height / static_cast<double>(upright.count());
}

}  // namespace matwright

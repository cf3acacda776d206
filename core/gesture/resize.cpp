// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "core/gesture/frame.h"
#include "core/gesture/gesture.h"
#include "core/measure/ticks.h"
#include "core/sketch/soundness.h"

namespace matwright {

namespace {

using gesture::Vector;

constexpr int bisections = 28;  // halves 200 in down to less than a tick

struct SideLimits {
    double low;
    double high;
};

SideLimits limitsOf(Length side, const ResizeOptions& options) {
    return {ticksOf(std::min(side, options.smallest)), ticksOf(std::max(side, largestSide))};
}

// How much longer each side is to get, in ticks along the piece's own axes.
Vector growthOf(const Piece& start, HandleSide side, Point by, bool fromCentre) {
    const Vector pull = gesture::turned(gesture::vectorOf(by), -start.rotation);
    const double ends = fromCentre ? 2 : 1;
    return {side.x * pull.x * ends, side.y * pull.y * ends};
}

Size freelySized(Size start, Vector growth, const ResizeOptions& options) {
    const auto sized = [&](Length length, double more) {
        const SideLimits limits = limitsOf(length, options);
        return Length::roundedFromTicks(
            std::clamp(ticksOf(length) + std::round(more), limits.low, limits.high));
    };
    return {sized(start.width, growth.x), sized(start.height, growth.y)};
}

Size sizedInRatio(Size start, HandleSide side, Vector growth, const ResizeOptions& options) {
    const double width = ticksOf(start.width);
    const double height = ticksOf(start.height);
    const double byWidth = side.x != 0 ? 1 + std::round(growth.x) / width : 0;
    const double byHeight = side.y != 0 ? 1 + std::round(growth.y) / height : 0;
    const SideLimits w = limitsOf(start.width, options);
    const SideLimits h = limitsOf(start.height, options);
    const double factor =
        std::clamp(std::max(byWidth, byHeight), std::max(w.low / width, h.low / height),
                   std::min(w.high / width, h.high / height));
    return {start.width.scaledRounded(factor), start.height.scaledRounded(factor)};
}

Size sizeAfter(const Piece& start, Handle handle, Point by, const ResizeOptions& options) {
    const HandleSide side = sideOf(handle);
    const Vector growth = growthOf(start, side, by, options.fromCentre);
    return options.keepRatio ? sizedInRatio(start.size, side, growth, options)
                             : freelySized(start.size, growth, options);
}

// The box of the new size whose corner, side or centre opposite the handle stays in place.
Rect boxAfter(const Piece& start, Size size, HandleSide side, bool fromCentre) {
    const Vector grown{ticksOf(size.width - start.size.width),
                       ticksOf(size.height - start.size.height)};
    const Vector shift =
        fromCentre ? Vector{}
                   : gesture::turned({side.x * grown.x / 2, side.y * grown.y / 2}, start.rotation);
    const Vector centre = gesture::centreOf(start);
    return Rect::at(gesture::placeAbout({centre.x + shift.x, centre.y + shift.y}, size), size);
}

bool isSmallerArea(Size a, Size b) {
    return a.width.ticks() * a.height.ticks() < b.width.ticks() * b.height.ticks();
}

void letPrintFollow(Piece& piece, const Piece& start) {
    if (start.printSize != start.size) {
        return;
    }
    const Size best = printSizeFor(piece.size);
    if (!start.size.contains(piece.size) || isSmallerArea(best, start.size)) {
        piece.printSize = best;
    }
}

Piece sizedTo(const Piece& start, Size size, HandleSide side, bool fromCentre) {
    Piece piece = withBox(start, boxAfter(start, size, side, fromCentre));
    letPrintFollow(piece, start);
    return piece;
}

Size between(Size from, Size to, double share) {
    return {from.width + (to.width - from.width).scaledRounded(share),
            from.height + (to.height - from.height).scaledRounded(share)};
}

}  // namespace

HandleSide sideOf(Handle handle) {
    switch (handle) {
        case Handle::TopLeft:
            return {-1, -1};
        case Handle::Top:
            return {0, -1};
        case Handle::TopRight:
            return {1, -1};
        case Handle::Right:
            return {1, 0};
        case Handle::BottomRight:
            return {1, 1};
        case Handle::Bottom:
            return {0, 1};
        case Handle::BottomLeft:
            return {-1, 1};
        case Handle::Left:
            return {-1, 0};
    }
    return {0, 0};
}

Piece resizedBy(const Piece& start, Handle handle, Point by, const ResizeOptions& options) {
    const HandleSide side = sideOf(handle);
    const Size wished = sizeAfter(start, handle, by, options);
    Piece piece = sizedTo(start, wished, side, options.fromCentre);
    if (!findFault(piece)) {
        return piece;
    }
    double sound = 0;
    double unsound = 1;
    Piece lastSound = start;
    for (int i = 0; i < bisections; ++i) {
        const double share = (sound + unsound) / 2;
        piece = sizedTo(start, between(start.size, wished, share), side, options.fromCentre);
        if (findFault(piece)) {
            unsound = share;
        } else {
            sound = share;
            lastSound = piece;
        }
    }
    return lastSound;
}

}  // namespace matwright

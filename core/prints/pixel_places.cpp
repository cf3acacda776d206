// SPDX-License-Identifier: MIT
#include "core/prints/pixel_places.h"

#include <algorithm>
#include <cmath>

namespace matwright {

namespace {

PixelRect within(PixelRect rect, PixelSize paper) {
    const auto kept = [](int low, int high, int end) {
        const int first = std::clamp(low, 0, end - 1);
        return std::pair(first, std::clamp(high, first + 1, end));
    };
    const auto [left, right] = kept(rect.left, rect.right, paper.width);
    const auto [top, bottom] = kept(rect.top, rect.bottom, paper.height);
    return {left, top, right, bottom};
}

}  // namespace

int pixelAt(Length edge, int ppi) {
    const double pixels = static_cast<double>(edge.ticks()) * ppi / Length::ticksPerInch;
    return static_cast<int>(std::lround(pixels));
}

PixelSize pixelsOf(Size size, int ppi) {
    return {std::max(1, pixelAt(size.width, ppi)), std::max(1, pixelAt(size.height, ppi))};
}

PixelRect pixelRectOf(const Rect& rect, int ppi) {
    return {pixelAt(rect.left(), ppi), pixelAt(rect.top(), ppi), pixelAt(rect.right(), ppi),
            pixelAt(rect.bottom(), ppi)};
}

PixelPlaces placesOf(const Print& print, const PrintOptions& options) {
    const bool meetsLeft = print.from > 0;
    const bool meetsRight = print.to < 1;
    Rect window = print.trim.expanded(-print.border);
    if (meetsLeft) {
        window.x.low = print.trim.left();
    }
    if (meetsRight) {
        window.x.high = print.trim.right();
    }
    Rect picture = window;
    const bool bare = print.border.isZero();
    picture.x.low -= bare || meetsLeft ? options.bleed : Length();
    picture.x.high += bare || meetsRight ? options.bleed : Length();
    picture.y = bare ? picture.y.expanded(options.bleed) : picture.y;
    const PixelSize paper = pixelsOf(print.paper, options.ppi);
    return {paper, within(pixelRectOf(print.trim, options.ppi), paper),
            within(pixelRectOf(window, options.ppi), paper),
            within(pixelRectOf(picture, options.ppi), paper)};
}

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include "core/prints/print_job.h"

namespace matwright {

// Whole pixels: right and bottom are one past the last.
struct PixelRect {
    int left = 0;
    int top = 0;
    int right = 0;
    int bottom = 0;
    friend bool operator==(const PixelRect&, const PixelRect&) = default;
    PixelSize size() const { return {right - left, bottom - top}; }
};

// The pixel an edge falls on: halves go away from zero.
int pixelAt(Length edge, int ppi);
// A paper as pixels: each side rounded, at least one.
PixelSize pixelsOf(Size size, int ppi);
// Every edge on its pixel, so that rectangles that touch on paper touch in pixels.
PixelRect pixelRectOf(const Rect& rect, int ppi);

// Where things lie on a print, in pixels. window <= picture, and both within the paper.
struct PixelPlaces {
    PixelSize paper;
    PixelRect trim;
    PixelRect window;   // what `crop` of the photo fills exactly
    PixelRect picture;  // with the bleed: what is not white
    friend bool operator==(const PixelPlaces&, const PixelPlaces&) = default;
};

// A side where the print meets another has no border; a side with a border has a white bleed.
PixelPlaces placesOf(const Print& print, const PrintOptions& options);

}  // namespace matwright

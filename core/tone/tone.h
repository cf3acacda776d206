// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>

#include "core/raster/raster.h"

namespace matwright {

// How a photo is evened out; nothing of it is ever written to the photo's own file. All zero and
// off is the photo as it is.
struct Tone {
    bool evenOut = false;  // the automatic brightening and balancing
    int brightness = 0;    // -100 .. 100
    int contrast = 0;      // -100 .. 100
    int warmth = 0;        // -100 (cooler) .. 100 (warmer)
    int saturation = 0;    // -100 (grey) .. 100
    int sharpen = 0;       // 0 .. 100, for the print, at its final pixels

    friend bool operator==(const Tone&, const Tone&) = default;
};
bool isSound(const Tone& tone);

// What the automatic part has to know of a photo: how often each value occurs in each channel of
// its sample.
struct Histogram {
    std::array<std::array<std::uint32_t, 256>, 3> counts{};
    friend bool operator==(const Histogram&, const Histogram&) = default;
};
Histogram histogramOf(const Raster& sample);

// Tone without sharpening is a function of a pixel's colour alone, so that it comes out the same on
// a preview and on a print: one curve a channel, then a mix with the pixel's luma.
//
// The automatic part follows the idea of the simplest colour balance (N. Limare, J.-L. Lisani,
// J.-M. Morel, A. B. Petro, C. Sbert, IPOL 1, 2011), made conservative: one common stretch over the
// three channels that clips at most 0.5 % at either end, a capped gamma towards a middle grey and a
// capped balance of the channels; a photo that uses the full range already stays as it is.
struct ToneMap {
    std::array<std::array<std::uint8_t, 256>, 3> curve;
    // 256 is unchanged, 0 is grey.
    int saturation = 256;
    bool isIdentity() const;
    friend bool operator==(const ToneMap&, const ToneMap&) = default;
};
// Equal arguments give equal maps on every machine. `sample` is the histogram of the photo's tone
// sample (see core/photo/photo_source.h): of the whole photo, not of the crop.
ToneMap toneMapOf(const Tone& tone, const Histogram& sample);

// In place, exact and the same for every caller.
void apply(const ToneMap& map, Raster& raster);

// Sharpening for print: an unsharp mask on luma, one radius, at final pixels; amount 0 .. 100, 0
// changes nothing. In place. The pixels nearer than 3 to an edge repeat the edge.
void sharpen(Raster& raster, int amount);

}  // namespace matwright

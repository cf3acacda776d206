// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <vips/vips8>

#include "core/raster/raster.h"

// Photos that tests make for themselves.

namespace matwright::test {

// No two corners alike and no symmetry: red grows to the right, green downwards, and a blue block
// fills the top left ninth.
Raster madePicture(PixelSize size);

// What a made photo's file says beside its pixels.
struct MadeWith {
    int orientation = 0;    // as it is written, sound or not; 0 writes none
    std::string taken;      // Exif DateTimeOriginal
    std::string digitized;  // Exif DateTimeDigitized
    std::string xmp;
    std::string profile;  // bytes of an ICC profile
};

vips::VImage madeImage(const Raster& raster, const MadeWith& with = {});

// The bytes of the file that libvips writes for a suffix: ".jpg[Q=95]", ".png", ".tif", ".webp".
std::string encoded(const vips::VImage& image, const std::string& suffix);
inline std::string madePhoto(PixelSize size, const std::string& suffix, const MadeWith& with = {}) {
    return encoded(madeImage(madePicture(size), with), suffix);
}

// The largest and the mean difference of two pictures of one size, over all channels.
struct Difference {
    int worst = 256;
    double mean = 256;
};
Difference differenceOf(const Raster& one, const Raster& other);

}  // namespace matwright::test

// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vips/vips8>

#include "core/error/error.h"
#include "core/photo/photo_file.h"
#include "core/photo/photo_limits.h"
#include "core/photo/tiff_tags.h"

// Internal to core/photo: a photo's file as a picture of libvips that is read as it is asked for,
// from the top to the bottom.

namespace matwright {

struct LoadedPhoto {
    vips::VImage image;  // as it lies in the file; the header is read, the pixels are not
    PhotoWeight weight;
    int orientation = 1;  // what is still to be done to the pixels; 1 for every HEIC
    std::string profile;  // the name of its colour profile, empty where it has none
    bool isProfileUsable = false;
    int colours = 3;  // bands without transparency
    TiffTags tiff;    // nothing in the other formats
};

// With the format's own loader and no other. `shrink` 1, 2, 4 or 8: see openUpright().
// Malformed where the header cannot be read; WrongFormat for a camera's raw picture; Unsupported
// where its pixels are of no kind that is turned to sRGB. A damaged picture fails while its pixels
// are asked for.
Result<LoadedPhoto> loadPhoto(const PhotoFile& file, int shrink = 1);

// Opaque sRGB, 3 bands of 8 bits: by the photo's profile where it is usable, else as sRGB (CMYK:
// libvips' own profile). Transparent parts are laid on white first.
vips::VImage toSrgb(const LoadedPhoto& photo, const vips::VImage& image);
vips::VImage onWhite(const LoadedPhoto& photo);

}  // namespace matwright

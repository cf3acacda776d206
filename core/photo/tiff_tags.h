// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "core/photo/photo_file.h"

namespace matwright {

// What libvips does not tell of a TIFF.
struct TiffTags {
    bool isRaw = false;     // a camera's raw picture: at its front is a preview or the bare mosaic
    std::string original;   // Exif DateTimeOriginal, as it is written
    std::string digitized;  // Exif DateTimeDigitized
};

// Of the first picture; nothing where the file cannot be read as a TIFF.
TiffTags tiffTags(const PhotoFile& file);

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>

#include "core/error/error.h"
#include "core/prints/print_job.h"

namespace matwright {

// What is told of the photo in the file of its print.
struct CaptureFacts {
    std::string taken;  // "2026-07-14 16:03:22", or empty
    // Fields of the photo's own Exif data by libvips' names ("exif-ifd3-GPSLatitude"), in its
    // words.
    std::map<std::string, std::string> place;
    friend bool operator==(const CaptureFacts&, const CaptureFacts&) = default;
};
// Of a photo's file; `keepPlace` takes the place of capture and the serial numbers along. A file
// that cannot be read gives what the page remembers of it.
CaptureFacts captureFacts(const Photo& photo, bool keepPlace);
// What holds for both: of a sheet with several photos.
CaptureFacts common(CaptureFacts facts, const CaptureFacts& other);

// The pixels as a JPEG, PNG or TIFF file (options.format; of Pdf, the JPEG for it): sRGB profile
// inside, the density in every tag the format has, Orientation 1 (JPEG, TIFF), the capture date
// (JPEG: Exif; all: XMP), nothing else of the photo. The density is options.ppi exactly; in a PNG
// it is the nearest whole number of pixels a metre (ISO/IEC 15948, pHYs), so that 300 reads back as
// 299.9994. Errors: WriteFailed.
Result<std::string> pictureFile(const Raster& raster, const CaptureFacts& facts,
                                const PrintOptions& options);

}  // namespace matwright

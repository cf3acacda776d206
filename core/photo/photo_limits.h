// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <optional>

#include "core/error/error.h"
#include "core/photo/photo_format.h"
#include "core/raster/raster.h"

namespace matwright {

// What decoding a photo may take of the memory, all of it: what the decoder keeps and the result.
inline constexpr std::int64_t photoMemory = 850'000'000;

// What its header says of a photo, as far as memory is concerned.
struct PhotoWeight {
    PhotoFormat format = PhotoFormat::Jpeg;
    PixelSize stored;
    int bands = 3;          // colours, and one more where parts are transparent
    int bytesABand = 1;     // of the pixels as they are decoded
    bool inPasses = false;  // a progressive JPEG, an interlaced PNG: kept whole while it is read
    friend bool operator==(const PhotoWeight&, const PhotoWeight&) = default;
};

// An upper bound of what its decoder keeps at one time, beyond some rows: per pixel
//   JPEG   0; in passes 2 bytes a band (the coefficients)
//   PNG    0; in passes all it holds
//   TIFF   all it holds (a file may be one single strip)
//   WebP   8 bytes
//   HEIC   9 bytes; 16 above 8 bits
// as measured with the decoders of Debian 12 (tests/checks/photo_hostile prints it).
std::int64_t decoderBytes(const PhotoWeight& weight);

// TooLarge where the photo has more than maxPhotoPixels or maxPhotoSide, or where decoding it to
// `result` pixels would take more than photoMemory.
std::optional<Error> findTooLarge(const PhotoWeight& weight, PixelSize result,
                                  const std::filesystem::path& file);

}  // namespace matwright

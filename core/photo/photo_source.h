// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/error/error.h"
#include "core/content/content_key.h"
#include "core/raster/raster.h"
#include "core/tone/tone.h"

// Photos on the disk: JPEG, PNG, TIFF, WebP and HEIC through libvips (none of its types here).
// Nothing is ever written to a photo. Every function may run on any thread, several at once.
// Errors are sentences for the person: NotFound, ReadFailed, TooLarge, WrongFormat (no picture, or
// of no kind that is read), Malformed (damaged or cut short), Unsupported.

namespace matwright {

// A photo above this is refused with a sentence before a pixel is decoded.
inline constexpr std::int64_t maxPhotoPixels = 250'000'000;
inline constexpr int maxPhotoSide = 100'000;

// What the header of a photo's file says.
struct PhotoFacts {
    std::string format;         // "JPEG", "PNG", "TIFF", "WebP", "HEIC"
    PixelSize stored;           // as it lies in the file
    PixelSize upright;          // after its EXIF turn (HEIC: after the turn its box asks for)
    int orientation = 1;        // 1 .. 8; an illegal or missing one is 1
    std::string profile;        // name of its colour profile; empty: none, taken as sRGB
    std::string taken;          // "2026-07-14 16:03:22"; empty where the file does not say
    std::optional<int> rating;  // -1 .. 5 (xmp:Rating); nothing where absent
    std::uintmax_t bytes = 0;
    ContentKey content;                // of the whole file
    std::vector<std::string> remarks;  // what a person should know: "animated: the first picture"
};

// Reads the header and hashes the file; decodes nothing.
Result<PhotoFacts> photoFacts(const std::filesystem::path& file);

// The photo upright in sRGB, 8 bits, no larger than `longSide` (0: full size), made with the
// decoder's own shrinking where it has one. Stops with Unsupported soon after `stop` is asked for.
Result<Raster> decodePhoto(const std::filesystem::path& file, int longSide,
                           std::stop_token stop = {});

// The sample that toneMapOf() wants: decodePhoto(file, toneSampleSide), so equal on every path.
inline constexpr int toneSampleSide = 512;
Result<Histogram> toneSample(const std::filesystem::path& file, std::stop_token stop = {});

// A JPEG of a raster, for thumbnails and small pictures; quality 1 .. 100. Without metadata.
std::string smallJpeg(const Raster& raster, int quality);
// Reads what smallJpeg() gives, and nothing larger than 16 megapixels.
Result<Raster> fromSmallJpeg(std::string_view bytes);

// Ready libvips (threads, caches, limits), once; called by all of the above.
void preparePhotoReading();

}  // namespace matwright

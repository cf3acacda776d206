// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/content/content_key.h"
#include "core/error/error.h"
#include "core/raster/raster.h"
#include "core/tone/tone.h"

// Photos on the disk: JPEG, PNG, TIFF, WebP and HEIC through libvips (none of its types here).
// Nothing is ever written to a photo. Every function may run on any thread, several at once.
// Errors are sentences for the person: NotFound, ReadFailed, TooLarge, WrongFormat (no picture, or
// of no kind that is read), Malformed (damaged or cut short), Unsupported.

namespace matwright {

// A photo above this is refused with a sentence before a pixel is decoded. So is one whose decoder
// and result would take more than 850 MB (core/photo/photo_limits.h), which comes earlier for HEIC,
// WebP, TIFF and progressive pictures: one decoding takes at most that, two at once twice as much.
inline constexpr std::int64_t maxPhotoPixels = 250'000'000;
inline constexpr int maxPhotoSide = 100'000;

// What the header of a photo's file says.
struct PhotoFacts {
    std::string format;  // "JPEG", "PNG", "TIFF", "WebP", "HEIC"
    PixelSize stored;    // as its decoder gives it (HEIC: after the turn and crop of its boxes)
    PixelSize upright;   // as decodePhoto() gives it
    // The EXIF turn, 1 .. 8, from stored to upright. An illegal or missing one is 1, and so is that
    // of every HEIC, whose decoder has turned it already.
    int orientation = 1;
    std::string profile;  // name of its colour profile; empty: none, taken as sRGB
    // "2026-07-14 16:03:22" by the clock of the place: Exif DateTimeOriginal, else
    // DateTimeDigitized, else XMP's exif:DateTimeOriginal, else xmp:CreateDate. Empty where none of
    // them is a time.
    std::string taken;
    std::optional<int> rating;  // -1 .. 5 (xmp:Rating); nothing where absent
    std::uintmax_t bytes = 0;
    ContentKey content;  // of the whole file
    // What a person should know, in sentences: "It is called .png but is a JPEG photo."
    std::vector<std::string> remarks;
};

// NotFound where the file holds another picture than the one whose content was `known`; errors of
// opening and reading it. Nothing where `known` is all zero: then nothing is known.
std::optional<Error> findOtherPicture(const std::filesystem::path& file, const ContentKey& known);

// Reads the header and hashes the file; decodes nothing.
Result<PhotoFacts> photoFacts(const std::filesystem::path& file);

// The photo upright in sRGB, 8 bits, no larger than `longSide` (0: full size), made with the
// decoder's own shrinking where it has one. Stops with Unsupported soon after `stop` is asked for.
Result<Raster> decodePhoto(const std::filesystem::path& file, int longSide,
                           const std::stop_token& stop = {});

// The sample that toneMapOf() wants: decodePhoto(file, toneSampleSide), so equal on every path.
inline constexpr int toneSampleSide = 512;
Result<Histogram> toneSample(const std::filesystem::path& file, const std::stop_token& stop = {});

// A JPEG of a raster, for thumbnails and small pictures; quality 1 .. 100. Without metadata.
std::string smallJpeg(const Raster& raster, int quality);
// Reads what smallJpeg() gives, and nothing larger than 16 megapixels.
Result<Raster> fromSmallJpeg(std::string_view bytes);

// Ready libvips (threads, caches, limits), once; called by all of the above.
void preparePhotoReading();

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <stop_token>

#include "core/error/error.h"
#include "core/prints/print_job.h"

namespace matwright {

// A print as pixels: its paper at options.ppi, each side rounded to whole pixels. The photo is
// resampled once, with a Lanczos kernel of three lobes (bicubic where it has too few pixels and has
// to grow), in its own gamma-encoded colours, which then become sRGB; straightened first where it
// has to be. Then tone, then sharpening. Outside the photo it is white; the bleed shows on what
// lies beyond the crop, and repeats the photo's edge where the photo ends. Cut marks where they are
// asked for and have room.
//
// This one function makes what is printed and what a person sees at 100 %. It keeps the result in
// memory (3 bytes a pixel) and reads the photo row by row. Errors: as decodePhoto(), NotFound where
// the file holds another picture than the photo's, OutOfRange for options, TooLarge above
// mostPrintPixels and where memory is short; nothing is thrown here and below.
Result<Raster> renderPrint(const Print& print, const Photo& photo, const PrintOptions& options,
                           const std::stop_token& stop = {});

// The prints of a sheet where they lie, rendered on all cores.
Result<Raster> renderGang(const Gang& gang, const std::vector<Print>& prints,
                          const std::function<const Photo&(PhotoId)>& photoOf,
                          const PrintOptions& options, const std::stop_token& stop = {});

// The finished file: bytes of a JPEG, PNG or TIFF with an sRGB profile and its density in every tag
// that the format has, or a PDF of one page whose MediaBox is the paper to 0.01 pt, whose TrimBox
// is the trim, with PrintScaling None and the JPEG in it untouched. The capture date is kept.
Result<std::string> printFile(const Print& print, const Photo& photo, const PrintOptions& options,
                              const std::stop_token& stop = {});

// The same of a gang; `photoOf` gives the photo of a print.
Result<std::string> gangFile(const Gang& gang, const std::vector<Print>& prints,
                             const std::function<const Photo&(PhotoId)>& photoOf,
                             const PrintOptions& options, const std::stop_token& stop = {});

// Every print a page of one PDF, in their order, rendered on all cores.
Result<std::string> printsPdf(const std::vector<Print>& prints, const std::string& title,
                              const std::function<const Photo&(PhotoId)>& photoOf,
                              const PrintOptions& options, const std::stop_token& stop = {});

}  // namespace matwright

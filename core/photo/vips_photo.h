// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <stop_token>
#include <vips/vips8>

#include "core/error/error.h"
#include "core/raster/raster.h"

// Internal to the parts that work on photos with libvips (core/photo, core/prints): brings libvips'
// types. Everybody else uses photo_source.h. Its exceptions (vips::VError) end in the source file
// that called it.

namespace matwright {

// A picture of libvips: a reference that is counted, so copies are cheap and equal.
using VipsHandle = vips::VImage;

// The whole photo upright: 3 bands of 8 bits, sRGB, opaque, in memory, so that any part of it can
// be asked for in any order and nothing is read from the file any more. Errors as of decodePhoto();
// it costs 3 bytes a pixel.
//
// `shrinkHint` 2, 4 or 8 lets a decoder that can (JPEG, WebP) give a picture that many times
// smaller each way, rounded up; the others give the full size. 1 is the full size from all.
Result<VipsHandle> openUpright(const std::filesystem::path& file, int shrinkHint = 1,
                               const std::stop_token& stop = {});

// The raster's pixels as a picture of libvips, without copying them; they live as long as it does.
VipsHandle vipsImageOf(Raster raster);

}  // namespace matwright

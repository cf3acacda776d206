// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <filesystem>

#include "core/raster/raster.h"

namespace matwright::test {

// A picture as busy as a photo: waves of all lengths, hard edges, soft gradients and a little
// noise, in colours. Equal arguments give equal pixels.
Raster busyPhoto(PixelSize size, std::uint32_t seed);

// The same as a JPEG file without metadata, and where it lies.
std::filesystem::path writeBusyPhoto(const std::filesystem::path& file, PixelSize size,
                                     std::uint32_t seed, int quality = 92);

}  // namespace matwright::test

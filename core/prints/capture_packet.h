// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace matwright {

// "2026-07-14 16:03:22" as Exif writes it, "2026:07:14 16:03:22".
std::string exifDate(const std::string& taken);
// An XMP packet with exif:DateTimeOriginal, "2026-07-14T16:03:22"; empty where `taken` is. It is
// the one place for a date that JPEG, PNG and TIFF share (XMP Specification Part 1 and Part 3).
std::string capturePacket(const std::string& taken);

}  // namespace matwright

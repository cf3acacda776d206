// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

#include "core/error/error.h"

namespace matwright {

enum class PhotoFormat { Jpeg, Png, Tiff, WebP, Heic };

// "JPEG", "PNG", "TIFF", "WebP", "HEIC".
std::string_view formatName(PhotoFormat format);

// As many first bytes of a file as formatOf() looks at.
inline constexpr std::size_t formatBytes = 256;

// By what the file holds, never by its name. WrongFormat where it is empty or none of the five
// formats; the sentence names the kind of file where it is a known one. `file` is only for the
// error's `where`.
Result<PhotoFormat> formatOf(std::string_view firstBytes, const std::filesystem::path& file);

// "It is called .png but is a JPEG photo."; empty where the name's end suits the format.
std::string wrongNameRemark(const std::filesystem::path& file, PhotoFormat format);

}  // namespace matwright

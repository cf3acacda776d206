// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/photo/photo_format.h"

namespace matwright {

// How the names of photo files end: the one list of them. What a file is, its bytes say
// (formatOf()); by its name it is only chosen from a folder or offered in a dialog.

// In lower case, with the dot; the usual one first.
std::span<const std::string_view> endingsOf(PhotoFormat format);
// Of all formats.
std::vector<std::string_view> photoEndings();

// The end of a name in lower case (ASCII), with its dot; empty where there is none.
std::string endingOf(const std::filesystem::path& file);
// In small letters or capitals.
bool isNamedAsPhoto(const std::filesystem::path& file);

}  // namespace matwright

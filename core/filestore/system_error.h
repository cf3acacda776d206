// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <filesystem>

#include "core/error/error.h"

namespace matwright {

// What the system's error number means for a person who reads or saves a file, and what to do.
// `where` of both is the path.
//
// NotFound where there is no such file, else ReadFailed.
Error readError(int number, const std::filesystem::path& path);
// Always WriteFailed; the sentence says that nothing was saved.
Error writeError(int number, const std::filesystem::path& path);

// TooLarge: the file has more than `limit` bytes.
Error tooLargeError(std::size_t limit, const std::filesystem::path& path);

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "core/pagefile/page_file.h"

namespace matwright::test {

// A small page with one of everything the file can say beside the sketch.
Making examplePage();
inline constexpr const char* exampleFolder = "/home/somebody/Pages";
std::string examplePageFile();

// `text` with its one occurrence of `from` replaced; throws std::logic_error where there is not
// exactly one, so that a table of changes cannot go stale unseen.
std::string replaced(std::string text, std::string_view from, std::string_view to);

// The smallest thing that passes for a JPEG: three bytes of its start and a number.
std::string smallPicture(int number);

}  // namespace matwright::test

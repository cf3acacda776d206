// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "core/error/error.h"
#include "core/measure/rect.h"

namespace matwright::app {

// Sizes as a command line has them: the id of the catalogue ("a4-lying", "4x6", see `sizes`), or
// width x height as people write lengths: "9 1/2 x 12", "20x30cm", "8in × 25cm". A unit behind the
// height counts for both sides where the width has none; without any they are inches.
// Errors: BadText, OutOfRange; `where` is empty.
Result<Size> parsePageSize(std::string_view text);   // sides as pages can have them
Result<Size> parsePrintSize(std::string_view text);  // sides as prints can have them
// A paper to print on: an id of the catalogue of sheets or prints, or a size.
Result<Size> parsePaperSize(std::string_view text);

// What the two read back to the same size: the id where there is one, else "9 1/2 in x 12 in". A
// print counts either way up.
std::string typedPageSize(Size size);
std::string typedPrintSize(Size size);

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "core/sketch/sketch.h"

namespace matwright::test {

// A small sketch with one of everything the file can say: one photo with two mats, a polygon, a
// rounded rectangle, an oval, a turned and locked piece, texts with markup and line breaks.
Sketch exampleSketch();

// A file without a picture around `model`, which is the text inside the model element.
std::string fileAround(std::string_view model);
// Inside a model: a page and then `pieces`, the text inside <pieces>.
std::string modelWith(std::string_view pieces);
// A sound block with `attributes` added to its start tag and `children` inside it.
std::string block(int id, std::string_view attributes = "", std::string_view children = "");

// `text` with its one occurrence of `from` replaced; throws std::logic_error where there is not
// exactly one, so that a table of changes cannot go stale unseen.
std::string replaced(std::string text, std::string_view from, std::string_view to);

}  // namespace matwright::test

// SPDX-License-Identifier: MIT
#pragma once

#include "tests/support/random_sketch.h"

namespace matwright::test {

// A sketch as somebody might have planned it: rows of equal prints a gutter apart, from the margin
// or in the middle of the page, mats, strips from edge to edge, a block, title, journaling and an
// ornament; single and double pages of every catalogue size. Nothing of it has to fit together.
Sketch plausibleSketch(Random& random);

}  // namespace matwright::test

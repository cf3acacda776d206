// SPDX-License-Identifier: MIT
#pragma once

#include "core/making/making_edit.h"
#include "tests/support/random_sketch.h"

namespace matwright::test {

// low .. high
int within(Random& random, int low, int high);

// A sound photo with nothing odd about it, lying or upright, its content told by `number`.
Photo plainPhoto(int number, PixelSize upright = {4032, 3024});
Photo randomPhoto(Random& random);
Making randomMaking(Random& random, int pieces, int photos);
// An edit that apply() accepts.
PageEdit randomPageEdit(Random& random, const Making& making);

// An upright rectangle on the page, printed at this size.
Piece slotAt(Point place, Size size);
constexpr Size inches(std::int64_t width, std::int64_t height) {
    return {Length::inches(width), Length::inches(height)};
}
// On a 12x12 page: 1 is 4x6 at the top left, 2 is 6x4 at the top right, 3 and 4 are 3x4, below.
Making fourSlots();

}  // namespace matwright::test

// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/cutpicture/planned_sheet.h"

namespace matwright {

struct SheetPictureOptions {
    bool numbers = true;  // of the cuts
    bool words = true;    // names and sizes where they fit; letters are always there
    // The step whose part is marked, everything else pale; counts from 0.
    std::optional<std::size_t> current;
};

// Where an area of the sheet comes to lie when the sheet is drawn as large as fits into `room`,
// in its true proportions, in the middle. Rounded to ticks.
Rect placeInRoom(const Rect& area, Size sheet, const Rect& room);

// The sheet drawn so: pieces with letter, name and size, leftovers pale and hatched with their
// size, cuts as lines numbered in the order of the steps, the middles that are cut out with a knife
// dashed and with the word. Texts too large for their place are shortened or left out; nothing
// lies outside of `room`.
std::vector<DrawingItem> sheetItems(const PlannedSheet& sheet, const Rect& room,
                                    const SheetPictureOptions& options = {});

// The same as a drawing of its own, at most `box` large and without an empty border.
Drawing sheetPicture(const PlannedSheet& sheet, Size box, const SheetPictureOptions& options = {});

// What one step does, as it lies on the trimmer: the part in hand with the blade running upright
// through it (a part that is cut level on the sheet's picture is given a quarter turn to the left,
// so that its top edge is at the left), what comes off in front of the blade on the left, and the
// setting above. As large as fits into `room`.
std::vector<DrawingItem> stepItems(const PlannedSheet& sheet, std::size_t step, const Rect& room);
// The same as a drawing of exactly `box`.
Drawing stepPicture(const PlannedSheet& sheet, std::size_t step, Size box);

}  // namespace matwright

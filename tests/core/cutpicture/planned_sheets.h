// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/cutpicture/planned_sheet.h"
#include "tests/support/random_sketch.h"

namespace matwright::test {

// The sheets of a job, planned by the engine, with names, a heading each and a knife cut where a
// piece is large enough.
std::vector<PlannedSheet> plannedSheets(const CutJob& job);
// A 12 x 12 in sheet with a strip of 12 x 3 and two mats of 4 x 5.
PlannedSheet smallSheet();
CutJob randomCutJob(Random& random);

std::vector<TextItem> textsOf(const std::vector<DrawingItem>& items);
bool says(const std::vector<DrawingItem>& items, const std::string& text);
// The smallest box around the ink; of texts an upper bound.
Rect inkOf(const DrawingItem& item);

}  // namespace matwright::test

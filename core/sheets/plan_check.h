// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/sheets/cut_plan.h"

namespace matwright {

// An independent look at a finished plan: it shares no code with the search, only the types. Every
// fault is a sentence; an empty list means that the plan can be cut as it stands:
//
// - every part of a sheet's tree is reached exactly once, the first is the whole sheet;
// - every cut goes from edge to edge of its part, and what the blade leaves on either side is
//   exactly the areas of the two parts (the kerf lies between them);
// - a piece's area is exactly its size, turned only where it may be, on its own paper, and clear of
//   the sheet's margin; no two pieces overlap and none leaves the sheet (looked at from the areas
//   alone, without the tree);
// - every piece is cut as often as wanted, together with what the plan owns up to as uncut;
// - no more sheets are taken than are at hand;
// - the cuts of a sheet keep within the stages, where they are limited.
std::vector<std::string> faultsOf(const CutPlan& plan, const CutJob& job);

// How many stages a sheet's cuts need, counted as CutStages says. The parts must be sound.
int stagesOf(const SheetPlan& plan, const CutJob& job);

}  // namespace matwright

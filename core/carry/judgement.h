// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <vector>

#include "core/carry/attempt.h"

namespace matwright::carry {

// Fills in what the attempt lost and its cost. Costs add up what a person would mind: lost
// relations, photos that overlap anew, prints far from the wished size or proportions, wasted
// photo paper, texts without room.
void judge(const Source& source, Attempt& attempt);

// A photo or words that lay inside the margins of a page, or of both pages together, and do not
// any more.
bool isNewlyOverMargin(const Source& source, std::size_t piece, const Footprint& after);

// Whether it matters when one of two pieces comes to lie on the other: a photo or words under a
// photo, words or paper. Ornaments may lie anywhere.
bool mustStayClear(const Piece& below, const Piece& above);

// How many such pairs overlap now, by their upright boxes, that did not before.
std::size_t newOverlaps(const Source& source, const std::vector<Footprint>& after);

}  // namespace matwright::carry

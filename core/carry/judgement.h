// SPDX-License-Identifier: MIT
#pragma once

#include <utility>
#include <vector>

#include "core/carry/attempt.h"

namespace matwright::carry {

// Fills in what the attempt lost and its cost. Costs add up what a person would mind: lost
// relations, photos that overlap anew, prints far from the wished size or proportions, wasted
// photo paper, texts without room.
void judge(const Source& source, Attempt& attempt);

// Two photos, mats included, whose upright boxes overlap now and did not before.
std::vector<std::pair<std::size_t, std::size_t>> newPhotoOverlaps(
    const Source& source, const std::vector<Footprint>& after);

}  // namespace matwright::carry

// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/carry/attempt.h"

namespace matwright::carry {

// What the attempt could not keep, a sentence each; worked out from the finished sketch, not from
// how it came about. Of more than mostRelatedPieces, overlaps are not looked for.
std::vector<std::string> gaveWayText(const Source& source, const Attempt& attempt);

// "3 · photo slot 4 × 6 in", "Pieces 2, 3 and 5".
std::string labelOf(const Source& source, const std::vector<std::size_t>& pieces);

// "Pieces 2 and 3 are no longer a gutter apart."
std::string lostText(const Source& source, const Relation& relation);

}  // namespace matwright::carry

// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/sketch/sketch.h"

namespace matwright::app {

// How far a copy is laid from its original, to the right and down, so that it is seen.
inline constexpr Point copyOffset = {Length::inches(0, 1, 4), Length::inches(0, 1, 4)};

// How far to move copies of these pieces, at least one: back onto the page where they lie wholly
// beside it, then by as few copyOffsets as leave none exactly on an equal piece of the sketch. What
// lies on the page stays on it: past its edge the steps go on from the other side.
Point wayForCopies(const Sketch& sketch, const std::vector<Piece>& pieces);
// The pieces moved that way.
std::vector<Piece> placedForPaste(const Sketch& sketch, std::vector<Piece> pieces);

}  // namespace matwright::app

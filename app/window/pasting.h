// SPDX-License-Identifier: MIT
#pragma once

#include "core/sketch/sketch.h"

namespace matwright::app {

// How far a copy is laid from its original, to the right and down, so that it is seen.
inline constexpr Point copyOffset = {Length::inches(0, 1, 4), Length::inches(0, 1, 4)};

// The pieces of `copy`, moved together: back onto the page where they lie wholly beside it, then by
// as few copyOffsets as leave none exactly on an equal piece of the sketch. What lies on the page
// stays on it: past its edge the steps go on from the other side.
Sketch placedForPaste(const Sketch& sketch, Sketch copy);

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#pragma once

#include "core/prints/pixel_places.h"

namespace matwright {

// Hairlines in line with the trim's edges, one pixel wide, outside the trim and the picture, where
// the paper is white and has at least 1/32 in for them; at most 1/8 in long, 1/64 in away from what
// is there. Nothing is ever drawn inside the trim.
void drawCutMarks(Raster& paper, const PixelRect& trim, const PixelRect& picture, int ppi);

// Whether a paper of this size has room for any of them.
bool haveRoomForMarks(PixelSize paper, const PixelRect& trim, const PixelRect& picture, int ppi);

}  // namespace matwright

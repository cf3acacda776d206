// SPDX-License-Identifier: MIT
#pragma once

#include "core/drawing/drawing.h"
#include "core/sketch/sketch.h"
#include "core/template/occupancy.h"

namespace matwright {

// The page edges, each page its own rectangle; the stroke lies inside the page.
Layer pageLayer(const PageSetup& setup);
// Margins, the fold (the middle of the fold gap, however narrow), and ticks at the middle of every
// page edge.
Layer guideLayer(const PageSetup& setup);
// What pageLayer and guideLayer draw, as things for texts to keep clear of.
void addGuides(const PageSetup& setup, bool withGuides, Occupancy& occupancy);

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include "core/drawing/drawing.h"
#include "core/template/scene.h"

namespace matwright {

// The layers of what is cut: mat edges, trim lines, and the parts of both that lie under a piece
// above, dashed. What lies off the sheet is left out.
std::vector<Layer> outlineLayers(const Sketch& sketch, const Scene& scene);

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include "core/sketch/sketch.h"
#include "core/sketchfile/model_element.h"

namespace matwright {

// The sketch in a model element of version 1. The element's version and unit have been looked at.
// Faults go to the reading; then the result is of no use.
Sketch readModel(ModelElement& model);

// One piece of it, its id aside.
Piece readPiece(ModelElement& element);

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include "core/sketch/sketch.h"
#include "core/sketchfile/model_element.h"

namespace matwright {

// The sketch in a model element of version 1. The element's version and unit have been looked at.
// Faults go to the reading; then the result is of no use.
Sketch readModel(ModelElement& model);

// The same after a look at the element's version and unit. An older version is brought up to the
// newest here, before its model is read: one step a version, each in a file of its own. There is no
// older version yet.
Sketch readWholeModel(ModelElement& model, Reading& reading);

// One piece of it, its id aside.
Piece readPiece(ModelElement& element);

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include "core/carry/footprint.h"

namespace matwright::carry {

// The piece moved, and where it is too large made smaller, until its outermost outline lies on the
// surface. Trims get smaller in their prints; sides go down to the step.
Piece broughtOnPage(Piece piece, const Rect& surface, Length step);

// A photo whose trim ends with its print where it was larger.
Piece withinPrint(Piece piece);

}  // namespace matwright::carry

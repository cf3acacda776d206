// SPDX-License-Identifier: MIT
#include "core/gesture/gesture.h"

namespace matwright {

Piece movedBy(Piece piece, Point by) {
    piece.place = piece.place + by;
    return piece;
}

}  // namespace matwright

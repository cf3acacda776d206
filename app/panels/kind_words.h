// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <span>

#include "core/sketch/piece.h"

namespace matwright::app {

// "Photo slot", as a title.
QString kindTitle(PieceKind kind);
// "2 photo slots, 1 strip", in the order of PieceKind.
QString countedKinds(std::span<const Piece* const> pieces);

}  // namespace matwright::app

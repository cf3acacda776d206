// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <vector>

#include "core/sketch/piece.h"

namespace matwright::app {

// Something the tray offers: a piece at the page's corner, and its words.
struct ReadyPiece {
    Piece piece;
    QString caption;      // short: "4 × 6", "Title"
    QString description;  // "Photo slot 4 × 6 in, upright"
};

// Photo slots for all prints of the catalogue, by their longer side (inches first), each
// upright and, unless square, lying; an upright and a lying one of a size are neighbours.
std::vector<ReadyPiece> readyPhotoSlots();
// Strips, blocks, a round block, a title, a journaling card and an embellishment.
std::vector<ReadyPiece> readyPapers();

}  // namespace matwright::app

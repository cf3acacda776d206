// SPDX-License-Identifier: MIT
#pragma once

#include "app/rendering/page_parts.h"

namespace matwright::app {

// What the pieces of a page wear beyond the sketch: photos and papers. Without one everything looks
// as a sketch does. The referred-to parts outlive it.
struct PageDress {
    const PhotoWork* work = nullptr;
    const PageSetup* page = nullptr;
    PartPictures* pictures = nullptr;

    // The photo the piece shows; `instead` is what a drag would make of it.
    const Placement* placementOf(PieceId id, const Placement* instead = nullptr) const;
    // Whether the piece looks otherwise than in a sketch.
    bool dresses(PieceId id, const Piece& piece) const;
};

}  // namespace matwright::app

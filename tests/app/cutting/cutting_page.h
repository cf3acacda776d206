// SPDX-License-Identifier: MIT
#pragma once

#include "core/sketch/edit.h"

namespace matwright::app {

// A page with one of each: a photo slot of 4 × 6 in with a mat of 1/4 in that names no paper, a
// strip of dots, a block of kraft.
inline Sketch pageToCut() {
    Piece slot;
    slot.kind = PieceKind::PhotoSlot;
    slot.name = "Beach";
    slot.place = {Length::inches(1), Length::inches(1)};
    slot.size = {Length::inches(4), Length::inches(6)};
    slot.printSize = slot.size;
    slot.mats.push_back({Length::inches(0, 1, 4), {}, ""});
    Piece strip;
    strip.kind = PieceKind::Strip;
    strip.place = {Length::inches(0), Length::inches(9)};
    strip.size = {Length::inches(12), Length::inches(2)};
    strip.paper = "dots";
    Piece block;
    block.kind = PieceKind::Block;
    block.place = {Length::inches(7), Length::inches(1)};
    block.size = {Length::inches(4), Length::inches(5)};
    block.paper = "kraft";
    const Piece pieces[] = {block, strip, slot};
    Sketch sketch = blankSketch();
    sketch.name = "Summer";
    (void)apply(sketch, addPieces(sketch, pieces));
    return sketch;
}
// Ids of it, from bottom to top.
inline constexpr PieceId blockId{1};
inline constexpr PieceId stripId{2};
inline constexpr PieceId slotId{3};

}  // namespace matwright::app

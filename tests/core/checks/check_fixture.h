// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/checks/checks.h"
#include "core/measure/length_text.h"
#include "core/sketch/edit.h"

namespace matwright::test {

// "3 1/2" as a person would type it, in inches.
inline Length in(std::string_view text) {
    const Result<Length> length = parseLength(text, Unit::Inch);
    EXPECT_TRUE(length) << text;
    return length.value_or(Length());
}

inline Piece pieceAt(PieceKind kind, std::string_view left, std::string_view top,
                     std::string_view width, std::string_view height) {
    Piece piece;
    piece.kind = kind;
    piece.place = {in(left), in(top)};
    piece.size = {in(width), in(height)};
    if (kind == PieceKind::PhotoSlot) {
        piece.printSize = piece.size;
    }
    return piece;
}

inline Piece photoAt(std::string_view left, std::string_view top, std::string_view width,
                     std::string_view height) {
    return pieceAt(PieceKind::PhotoSlot, left, top, width, height);
}

// On a 12 x 12 page with 1/2 in margins; ids 1, 2, … from bottom to top.
inline Sketch sketchWith(const std::vector<Piece>& pieces) {
    Sketch sketch = blankSketch();
    EXPECT_TRUE(apply(sketch, addPieces(sketch, pieces)));
    return sketch;
}

// The sentences of one kind, in order.
inline std::vector<std::string> sentences(const Sketch& sketch, CheckKind kind,
                                          const CheckSettings& settings = {}) {
    std::vector<std::string> found;
    for (const CheckFinding& finding : checkSketch(sketch, settings)) {
        if (finding.kind == kind) {
            found.push_back(finding.sentence);
        }
    }
    return found;
}

using Sentences = std::vector<std::string>;

}  // namespace matwright::test

// SPDX-License-Identifier: MIT
#pragma once

#include <map>

#include "core/checks/checks.h"
#include "core/outline/layering.h"

namespace matwright {

// What the finders share while one sketch is checked.
struct CheckContext {
    const Sketch& sketch;
    const CheckSettings& settings;
    const Layering& layering;
    const std::map<PieceId, std::size_t>& numbers;  // pieceNumber() of each piece

    // "3 · photo slot 4 × 6 in"
    std::string label(PieceId id) const;
};

// One piece that is being checked.
struct CheckedPiece {
    PieceId id;
    const Piece& piece;
    Rect bounds;   // around everything of it, rounded outwards
    Length slack;  // how much of `bounds` may be rounding
};

using Findings = std::vector<CheckFinding>;

// Each adds what it finds about one piece; the CheckKind says what that is.
void findOffPage(const CheckContext& context, const CheckedPiece& checked, Findings& findings);
void findOverMargin(const CheckContext& context, const CheckedPiece& checked, Findings& findings);
void findAcrossFold(const CheckContext& context, const CheckedPiece& checked, Findings& findings);
void findPhotosOverlap(const CheckContext& context, const CheckedPiece& checked,
                       Findings& findings);
void findHidden(const CheckContext& context, const CheckedPiece& checked, Findings& findings);
void findOffScale(const CheckContext& context, const CheckedPiece& checked, Findings& findings);
void findNoSuchPrintSize(const CheckContext& context, const CheckedPiece& checked,
                         Findings& findings);
void findTrimOverPrint(const CheckContext& context, const CheckedPiece& checked,
                       Findings& findings);

}  // namespace matwright

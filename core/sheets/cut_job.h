// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/error/error.h"
#include "core/measure/rect.h"

namespace matwright {

// What is to be cut from what. Pieces and sheets are rectangles, every cut is straight and goes
// from edge to edge of the part in hand. Lengths are exact; nothing is rounded.

struct CutPiece {
    Size size;
    int count = 1;
    bool mayTurn = true;  // by a quarter turn
    int paper = 0;        // pieces are only cut from sheets of the same paper
    friend bool operator==(const CutPiece&, const CutPiece&) = default;
};

// The part of a sheet along each edge that no piece may touch. A margin above 0 but narrower than
// the blade counts as the blade's width: it has to be cut off.
struct SheetMargin {
    Length left;
    Length top;
    Length right;
    Length bottom;
    friend bool operator==(const SheetMargin&, const SheetMargin&) = default;
};

struct CutSheet {
    Size size;
    std::optional<int> atHand;  // nothing: as many as are needed
    std::int64_t price = 1;     // what one costs, or how unwelcome its use is; 0 or more
    SheetMargin margin;
    int paper = 0;
    friend bool operator==(const CutSheet&, const CutSheet&) = default;
};

// How often the direction of cuts may change. Three stages: the sheet into strips, strips into
// parts, parts into pieces. A last cut that only takes waste off a single piece is not counted
// (Gilmore & Gomory 1965 call such patterns non-exact), nor are the cuts along a sheet's margin.
enum class CutStages { Any, AtMostThree };

struct CutRules {
    Length kerf;  // what a cut loses to the blade
    CutStages stages = CutStages::Any;
    // A leftover narrower than this is waste.
    Length usefulSide = Length::inches(1);
    friend bool operator==(const CutRules&, const CutRules&) = default;
};

struct CutJob {
    std::vector<CutPiece> pieces;
    std::vector<CutSheet> sheets;
    CutRules rules;
    friend bool operator==(const CutJob&, const CutJob&) = default;
};

// Together with the pieces' counts: at most this many pieces in one job.
inline constexpr int maxPiecesOfJob = 2000;
// And at most this much for one sheet.
inline constexpr std::int64_t maxSheetPrice = 1'000'000'000;

// What keeps the job from being planned: sizes or counts that are not positive, lengths beyond
// Length::coordinateLimit(), negative margins or prices, a kerf beyond 1 in, too many pieces or too
// large sheets for them (2,000 pieces go with sheets up to 48 x 48 in). Nothing where the
// job is sound. A piece that fits on no sheet is not a fault: the plan names it as not cut.
std::optional<Error> findFault(const CutJob& job);

// The part of the sheet that pieces may lie on; not positive where the margins leave nothing.
Rect usableArea(const CutSheet& sheet, Length kerf);

}  // namespace matwright

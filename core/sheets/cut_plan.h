// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/sheets/cut_job.h"

namespace matwright {

// Which way the blade runs: Upright parts left from right, Level parts top from bottom.
enum class CutDirection { Upright, Level };

// A part of a sheet: cut in two, a piece, or left over.
struct CutPart {
    enum class Use { Cut, Piece, Leftover };

    Rect area;  // on the whole sheet; origin at its top left corner
    Use use = Use::Leftover;
    // For a cut: the blade takes [at, at + kerf] of the sheet's x (Upright) or y (Level), as far as
    // that lies in `area`. What lies before is `first`, what lies behind is `second`: indexes of
    // parts, or -1 where the blade leaves nothing on that side.
    CutDirection direction = CutDirection::Upright;
    Length at;
    int first = -1;
    int second = -1;
    // For a piece: index of the job's pieces; its area is exactly the piece.
    int piece = -1;
    bool turned = false;

    friend bool operator==(const CutPart&, const CutPart&) = default;
};

// One sheet and its cuts, as a tree in a list: parts[0] is the whole sheet, a part stands before
// the parts it is cut into.
struct SheetPlan {
    int sheet = 0;  // index of the job's sheets
    std::vector<CutPart> parts;
    friend bool operator==(const SheetPlan&, const SheetPlan&) = default;
};

struct CutPlan {
    std::vector<SheetPlan> sheets;
    // How many of each piece of the job are not cut, because no sheet (or none of those at hand)
    // has room for them. As long as the job's pieces.
    std::vector<int> uncut;
    friend bool operator==(const CutPlan&, const CutPlan&) = default;
};

std::int64_t costOf(const CutPlan& plan, const CutJob& job);
// The largest part left over with both sides at least usefulSide; a zero rectangle where none is.
struct LargestLeftover {
    int sheet = -1;  // index of the plan's sheets
    Rect area;
};
LargestLeftover largestLeftover(const CutPlan& plan, const CutJob& job);
int cutsOf(const SheetPlan& sheet);
int cutsOf(const CutPlan& plan);
// How many distances from an edge the trimmer has to be set to, each counted once a sheet.
int settingsOf(const SheetPlan& sheet);
int settingsOf(const CutPlan& plan);

}  // namespace matwright

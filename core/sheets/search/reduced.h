// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "core/sheets/cut_job.h"

namespace matwright::sheets {

// One paper's share of a job as plain integers, as the search sees it.
//
// All lengths are counted in the greatest common divisor of what is added up (pieces and kerf);
// sheets are rounded down to it, which loses no plan. The blade is added to both sides of every
// piece and of every sheet: then pieces that touch are exactly one blade apart, and the last blade
// may run off the sheet. Both steps are exact.

struct Kind {
    std::int32_t w = 0;
    std::int32_t h = 0;
    bool turn = false;  // may be turned, and turning makes a difference
    int count = 0;
    std::vector<int> sources;  // for each copy the index of the job's piece
    std::int64_t area() const { return std::int64_t{w} * h; }
};

struct Stock {
    std::int32_t w = 0;
    std::int32_t h = 0;
    std::int64_t price = 0;
    int count = 0;   // at hand; never more than there are pieces
    int source = 0;  // index of the job's sheets
    std::int64_t area() const { return std::int64_t{w} * h; }
    bool holds(const Kind& kind) const {
        return (kind.w <= w && kind.h <= h) || (kind.turn && kind.h <= w && kind.w <= h);
    }
};

struct Reduced {
    std::int64_t unit = 1;        // ticks
    std::int64_t kerf = 0;        // units
    std::int32_t usefulSide = 1;  // units; a narrower leftover is waste
    bool threeStages = false;
    std::vector<Kind> kinds;    // largest area first; equal pieces are one kind
    std::vector<Stock> stocks;  // only those that hold a piece

    int pieces() const;
    std::int64_t area() const;
};

// Every paper of a sound job that has pieces, in ascending order; pieces that fit on no sheet are
// counted in `uncut` (as long as the job's pieces) and left out.
std::vector<Reduced> reducedByPaper(const CutJob& job, std::vector<int>& uncut);

}  // namespace matwright::sheets

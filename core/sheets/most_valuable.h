// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/sheets/cut_planner.h"

namespace matwright {

// The most valuable cut of one sheet: any number of stages, cuts from edge to edge.

struct ValuedPiece {
    Size size;
    std::optional<int> copies;  // at most this often; nothing: as often as fits
    std::int64_t value = 0;     // of one; 0 or more, at most 1,000,000,000
    bool mayTurn = false;
};

struct ValueJob {
    Size sheet;
    Length kerf;
    std::vector<ValuedPiece> pieces;  // at most 255
};

struct ValueAnswer {
    std::int64_t value = 0;
    std::int64_t bound = 0;   // no cut is worth more
    bool proved = false;      // value == bound
    std::vector<int> counts;  // of each piece
    CutPlan plan;             // of cutJobOf(job, counts)
    std::uint64_t steps = 0;
};

// Unlimited copies are solved by dynamic programming, limited ones by best-first search over
// patterns built bottom-up; the methods and their papers stand in search/cut_table.h and
// search/limited_value.h. Proved unless a limit ends the search. Deterministic as planCuts().
//
// Errors: OutOfRange for sizes, kerf, values or numbers outside of what is said above.
Result<ValueAnswer> mostValuableCut(const ValueJob& job, const CutLimits& limits = {},
                                    const std::stop_token& stop = {});

// The same sheet and pieces as a cutting job with these counts, for the checker and for steps.
CutJob cutJobOf(const ValueJob& job, const std::vector<int>& counts);

}  // namespace matwright

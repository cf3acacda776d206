// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/sheets/cut_job.h"

namespace matwright::test {

// Published cutting instances, read from the folder `cutting` beside the clone. One unit of an
// instance is one tick.

struct PackingInstance {
    std::string name;
    CutJob job;  // one sheet size, unlimited, price 1; pieces fixed
    int lowerBound = 0;
    int bestKnown = 0;
    int openSolver3 = 0;    // an open solver's 5 s, three stages
    int openSolverAny = 0;  // and any number
};

struct ValueInstance {
    std::string name;
    std::string variant;
    Size sheet;
    struct Piece {
        Size size;
        int copies;  // 0: unlimited
        std::int64_t value;
    };
    std::vector<Piece> pieces;
    bool mayTurn = false;
    std::int64_t published = 0;
};

// The folder, where it is.
std::optional<std::filesystem::path> cuttingData();

// The 149 instances of Berkey & Wang and Martello & Vigo, fixed or turnable.
std::vector<PackingInstance> packingInstances(const std::filesystem::path& folder, bool mayTurn);
// gcut1-9 in three variants, cgcut1-3, ngcut1-12, each with its published optimum.
std::vector<ValueInstance> valueInstances(const std::filesystem::path& folder);

}  // namespace matwright::test

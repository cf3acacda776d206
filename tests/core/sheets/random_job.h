// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <random>

#include "core/sheets/cut_job.h"

namespace matwright::test {

struct RandomJobOptions {
    int kinds = 6;
    int mostCopies = 2;
    bool limitedStock = false;
    bool margins = false;
    Length kerf;
    CutStages stages = CutStages::Any;
};

// Pieces in whole 1/8 in for one or two sheet sizes of up to 12 in.
CutJob randomJob(std::uint64_t seed, const RandomJobOptions& options = {});

// Whole inches, for jobs by hand.
Size inchSize(std::int64_t w, std::int64_t h);

}  // namespace matwright::test

// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

#include "core/sheets/cut_job.h"

namespace matwright::test {

// What one to six pages need of craft paper: mats under photos (some double), strips across the
// page, blocks; on 12x12 and 8.5x11 sheets of two to five papers, and a few scraps. All sizes are
// whole 1/16 in. A sheet costs 100 (8.5x11: 75), a scrap 1: it is taken where it saves a sheet.
// Print sizes are those of the catalogue; how often what occurs is a guess (common practice, no
// source).
CutJob realCase(std::uint64_t seed);

}  // namespace matwright::test

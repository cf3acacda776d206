// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>

#include "core/sheets/cut_planner.h"

namespace matwright {

// How far the search for a plan of papers is.
struct PaperProgress {
    std::size_t sheets = 0;   // of the best plan so far
    std::size_t atLeast = 0;  // no plan that is as cheap takes fewer
    friend bool operator==(const PaperProgress&, const PaperProgress&) = default;
};

// The engine's progress, whose prices are made up, in sheets. A plan that costs no more than the
// best so far takes no sheet that is dearer than it, so it takes at least as many as the dearest of
// the others need to reach the bound.
PaperProgress paperProgress(const CutProgress& progress, const CutJob& job);

}  // namespace matwright

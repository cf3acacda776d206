// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "core/sketch/sketch.h"

namespace matwright {

// Where a slot's trim is parted by the fold of a double page: how much of it lies on each page.
// What is over the fold gap is neither's; a photo there comes out as two prints that meet.
struct FoldParting {
    Length left;
    Length right;
    // What shows the photo, as if there were no gap, less a border all around.
    Size window(Length height, Length border) const {
        return {left + right - border * 2, height - border * 2};
    }
    // How much of that window lies on the left, 0 .. 1.
    double share(Length border) const { return ratio(left - border, left + right - border * 2); }
    friend bool operator==(const FoldParting&, const FoldParting&) = default;
};

// Nothing where the slot lies on one page, is turned (it is cut by hand then), or reaches over the
// fold by no more than its border.
std::optional<FoldParting> foldParting(const Piece& slot, Length border, const PageSetup& setup);

// The window that a placement's crop is for: windowOf(), less the fold gap where that parts it.
Size shownWindow(const Piece& slot, Length border, const PageSetup& setup);

}  // namespace matwright

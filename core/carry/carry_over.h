// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/sketch/sketch.h"

namespace matwright {

struct CarriedOver {
    Sketch sketch;
    // What could not be kept, a plain sentence each: "The left edges of pieces 2 and 5 are no
    // longer in line.", "3 · photo slot 4 × 6 in is printed 3 × 4 in now." Numbers are
    // pieceNumber(). Empty where nothing had to give.
    std::vector<std::string> gaveWay;
};

// The setup of a sketch on pages of another size: margins, gutter, fold gap and whether it is a
// double page stay. Margins that would leave less than a quarter of a side are made smaller.
PageSetup onPageSize(const PageSetup& setup, Size pageSize);

// The same design on another page. Sketch and target must be sound, and so is the result. Ids,
// order, names, notes, papers, locks and angles stay; locked pieces are carried like the others.
//
// Kept: distances to the margins and page edges where a piece lay on them, gutters, mats' borders,
// edges in line, equal gaps, what is centred on the page or with each other, what lies flush.
// Photos get catalogue prints near the size they would have by scale, the trim inside the print.
// What could not be kept is told in `gaveWay`: nothing is lost silently. A print that is not in the
// catalogue stays where it fits.
//
// No piece leaves the page that did not before. An equal setup gives an equal sketch. Where nothing
// gave way, carrying the result back gives an equal sketch.
//
// A single page carried to a double page lies on the left page. A double page carried to a single
// one is squeezed onto it.
CarriedOver carriedOver(const Sketch& sketch, const PageSetup& target);

}  // namespace matwright

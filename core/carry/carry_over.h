// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
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
// order, names, notes, papers, locks, mats and angles stay; locked pieces are carried like others.
//
// Kept: what lies on page edges and margins, gutters, mats' borders, edges in line, equal gaps,
// what is centred on the page or with another, what lies flush. Photos get catalogue prints, the
// same ones where they fit, else near the size they would have by scale; trims lie inside the
// prints. A print that is not in the catalogue may stay. What could not be kept is found by
// comparing the finished sketch with the old one and told in `gaveWay`: lost relations, other
// prints, forced trims, words without room, margins overrun, new overlaps of photos and words.
// Above 60 pieces everything is only scaled, which is told too.
//
// No piece leaves the page that did not before. An equal setup gives an equal sketch. Where nothing
// gave way, carrying the result back gives an equal sketch: this is tried, and where the way back
// would differ (because both ways round to the trimmer's step), a sentence says that.
//
// Sides that change go onto the trimmer's step; cut sides of photos do too where the sketch was
// measured in another one. Without a step it is that of the target page: 1 mm where it is measured
// in millimetres and the sketch's page is not, 1/16 in the other way round; between pages of one
// kind the step that the sketch is measured in.
//
// A single page carried to a double page lies on the left page. A double page carried to a single
// one is squeezed onto it, its outer edges on the page's.
//
// Method, an axis at a time: relations that fix distances join lines into sets; those of middles
// and equal gaps are linear equations, taken in order of rank as long as they do not contradict;
// what is left free settles like springs within bounds, is rounded to the step, and a search
// over the prints keeps the best by a cost. (Constraints by rank as in A. Borning et al.,
// "Constraint Hierarchies", Lisp and Symbolic Computation 5, 1992; cited from memory.)
CarriedOver carriedOver(const Sketch& sketch, const PageSetup& target,
                        std::optional<Length> trimmerStep = {});

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include "core/sketch/sketch.h"

namespace matwright {

enum class WholeTurn {
    MirroredLeftRight,
    MirroredTopBottom,
    UpsideDown,
    QuarterClockwise,
    QuarterCounterClockwise,
};
inline constexpr WholeTurn allWholeTurns[] = {
    WholeTurn::MirroredLeftRight, WholeTurn::MirroredTopBottom, WholeTurn::UpsideDown,
    WholeTurn::QuarterClockwise, WholeTurn::QuarterCounterClockwise};

// Whether it makes a quarter turn, so that the page stands the other way up afterwards.
constexpr bool isQuarter(WholeTurn turn) {
    return turn == WholeTurn::QuarterClockwise || turn == WholeTurn::QuarterCounterClockwise;
}

// The whole sketch the other way round: page, margins and every piece, locked ones too. Ids, order,
// names, notes, papers and mats stay.
//
// Photos and texts stay upright: the boxes are turned, not what lies in them. A quarter turn swaps
// the sides of page, box and print; angles are mirrored by a mirror and stay otherwise; polygon
// corners go along; a mat's deeper bottom border stays at the bottom. What is turned is the
// outermost box, so margins and gutters stay what they are (where a bottom border differs, a
// quarter turn swaps the sides of the trim alone, so that gaps there change by half of the
// difference). Of a double page the mirror swaps the pages about the fold.
//
// Laws: a mirror or a half turn twice, and four quarter turns, give an equal sketch; so do a
// quarter turn and its opposite. Exact, except under mirrors for pieces that have a differing
// bottom border and are turned by no multiple of 90 degrees: their place is within 2 ticks. Two
// quarter turns are a half turn (for pieces with a differing bottom border within 1 tick).
//
// Errors: Unsupported for a quarter turn of a double page (the fold would lie across); OutOfRange
// where a piece that lies far beside the page would leave the coordinates.
// The sketch must be sound, and so is the result.
Result<Sketch> turned(const Sketch& sketch, WholeTurn turn);

}  // namespace matwright

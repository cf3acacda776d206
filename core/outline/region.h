// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/outline/path.h"
#include "core/sketch/sketch.h"

namespace matwright {

// A flat area with holes, in ticks as doubles. Curves enter as chords within `chordTolerance`.
inline constexpr Length chordTolerance = Length::hundredthMillimetres(1);

struct Ring {
    std::vector<Vertex> corners;  // not repeated at the end
};
struct PolygonWithHoles {
    Ring outer;
    std::vector<Ring> holes;
};
struct Region {
    std::vector<PolygonWithHoles> parts;
    bool isEmpty() const { return parts.empty(); }
};

// The area inside a closed path that does not cross itself; empty below three corners.
Region regionOf(const Path& closedPath);
Region united(const std::vector<Region>& regions);
Region intersected(const Region& a, const Region& b);
Region subtracted(const Region& a, const Region& b);
// Square inches; relative error below 1e-9 for straight-edged regions.
double areaSquareInches(const Region& region);
// The smallest upright box, rounded outwards to ticks; nothing to bound gives an empty box at 0, 0.
Rect boundsOf(const Region& region);

// A line cut where it dives under a cover. Pieces keep the line's direction.
struct SplitLine {
    std::vector<Path> visible;
    std::vector<Path> hidden;
};
// `line` (open or closed) cut where it passes into or out of `cover`. What runs along the boundary
// of the cover, within half a tick, is visible. A path that is not cut at all comes back unchanged;
// one that is cut comes back as open paths, its curves as chords.
SplitLine splitUnder(const Path& line, const Region& cover);

// What covers what in a sketch. For more than one question about the same sketch see Layering
// (layering.h), which these are short forms of.

// What lies above a piece, mats included, as far as it comes near the piece: every other piece
// whose box meets the box of this piece's outermost and print outlines. Empty where there is no
// such piece.
Region coverAbove(const Sketch& sketch, PieceId id);
// The share of the piece's trim area that is under other pieces: 0..1. 0 where there is no such
// piece.
double hiddenShare(const Sketch& sketch, PieceId id);

struct Overlap {
    PieceId below;
    PieceId above;
    double areaSquareInches;
    friend bool operator==(const Overlap&, const Overlap&) = default;
};
// Smaller shared areas than this, in square inches, are rounding and not an overlap.
inline constexpr double smallestOverlap = 0.0001;
// Every pair whose outermost outlines share an area above smallestOverlap, in order of the lower
// piece from bottom to top, then of the upper one. Boxes are compared first through an R-tree, so
// pages of thousands of pieces that hardly overlap stay quick.
std::vector<Overlap> overlaps(const Sketch& sketch);

}  // namespace matwright

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

Region regionOf(const Path& closedPath);
Region united(const std::vector<Region>& regions);
Region intersected(const Region& a, const Region& b);
Region subtracted(const Region& a, const Region& b);
// Square inches; relative error below 1e-9 for straight-edged regions.
double areaSquareInches(const Region& region);

// A line cut where it dives under a cover. Pieces keep the line's direction.
struct SplitLine {
    std::vector<Path> visible;
    std::vector<Path> hidden;
};
// `line` (open or closed) cut at the boundary of `cover`. Straight paths stay straight; a curved
// path that is not cut at all comes back unchanged, one that is cut comes back as chords.
SplitLine splitUnder(const Path& line, const Region& cover);

// What covers what: everything that lies above a piece, mats included.
Region coverAbove(const Sketch& sketch, PieceId id);
// The share of the piece's trim area that is under other pieces: 0..1.
double hiddenShare(const Sketch& sketch, PieceId id);

struct Overlap {
    PieceId below;
    PieceId above;
    double areaSquareInches;
};
// Every pair whose outermost outlines share an area above 0.0001 sq in, bottom piece first, in
// order from bottom to top. Boxes are compared first through an R-tree, so pages of thousands of
// pieces that hardly overlap stay quick.
std::vector<Overlap> overlaps(const Sketch& sketch);

}  // namespace matwright

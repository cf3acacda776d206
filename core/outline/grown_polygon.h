// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/outline/path.h"

namespace matwright {

// How far a mitred corner may reach, counted in the wider of its two sides' moves.
inline constexpr int longestMitre = 4;

// The polygon with every side moved outwards by `border` (positive). A side that faces down by
// f = 0..1 (1: the page's bottom) moves by border + (bottom - border) * f, so that a rectangle gets
// exactly `bottom` (positive) below and slanted sides something between. Corners are mitred, and
// bevelled where the mitre would reach more than longestMitre times the wider of its two moves. The
// corners may run either way round; the result runs the same way. The corners must not cross
// themselves and must have an area; the result does neither: notches too narrow for the border
// close up, and a pocket left inside is filled.
std::vector<Vertex> grownPolygon(const std::vector<Vertex>& corners, double border, double bottom);

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/measure/length_text.h"
#include "core/template/occupancy.h"
#include "core/template/scene.h"

namespace matwright {

// Left: a horizontal line from the page's left edge. Top: a vertical line from its top edge.
enum class Distance { Left, Top };

// One distance of one piece.
struct DistanceOf {
    PieceId piece;
    Distance distance;
    friend auto operator<=>(const DistanceOf&, const DistanceOf&) = default;
};

struct DimensionPlan {
    std::vector<DrawingItem> items;
    // What a line shows: its own piece, and pieces whose edge continues that piece's edge, tied to
    // it by a thin line.
    std::set<DistanceOf> shown;
};

// Finds dimension lines with their figures for as many of the wanted distances as there is room
// for. No line or figure meets another, or anything marked in `occupancy`; lines may pass over
// pieces. Several orders of placing are tried; the one that shows most wins.
DimensionPlan planDimensions(const Scene& scene, const Occupancy& occupancy, Scale scale,
                             const std::set<DistanceOf>& wanted);

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "core/drawing/drawing.h"
#include "core/template/dimensions.h"

namespace matwright {

// Where a piece's outermost edge touches the upright line through its left end (or the level line
// through its top): a stretch for straight edges, a single point for corners and curves.
struct EdgeContact {
    Length edge;     // where the distance ends: x for Left, y for Top
    Interval along;  // the other coordinate
};
EdgeContact contactOf(const ScenePiece& piece, Distance distance);

// A dimension line with its figure, as placed.
struct DimensionLine {
    Distance distance;
    Length from;  // the page edge
    Length to;    // the piece's edge
    Length across;
    std::string figure;
    Length height;
    Rect figureBox;

    // The line with its arrowheads and a little air.
    Rect lineBox() const;
};

// The first line in order of preference that has room: for Left from the top of the contact
// downwards, for Top from its right end leftwards, where the edge shows first of all.
std::optional<DimensionLine> findDimensionLine(const Scene& scene, const Occupancy& occupancy,
                                               const ScenePiece& piece, Distance distance,
                                               Scale scale);

std::vector<DrawingItem> itemsOf(const DimensionLine& line);

// A box from its two sides along the distance and across it.
Rect boxOf(Distance distance, Interval along, Interval across);
Vertex vertexOf(Distance distance, Length along, Length across);

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/snap/axis.h"
#include "core/snap/edge_list.h"

namespace matwright {

namespace snapping {

// A piece that does not move during the gesture.
struct Neighbour {
    Rect trim;
    Rect outermost;
    std::size_t number;  // see pieceNumber
    PieceKind kind;
    std::string name;
};
// "2 · photo slot", or "2 · Beach" where the piece has a name; long names are cut.
std::string labelOf(const Neighbour& neighbour);

// The neighbours' lines along one axis.
struct AxisIndex {
    EdgeList trimEdges;
    EdgeList trimCentres;
    EdgeList outermostEdges;
    EdgeList matEdges;  // outermost edges of neighbours with mats
    FacingEdges outermostLows;
    FacingEdges outermostHighs;
};

}  // namespace snapping

struct SnapContext::Index {
    PageSetup page;
    std::vector<Rect> pages;
    std::vector<Rect> insideMargins;
    std::vector<snapping::Neighbour> neighbours;
    snapping::AxisIndex horizontal;
    snapping::AxisIndex vertical;

    const snapping::AxisIndex& along(Axis axis) const {
        return axis == Axis::Horizontal ? horizontal : vertical;
    }
    const snapping::Neighbour& neighbourOf(const snapping::Edge& edge) const {
        return neighbours[edge.neighbour];
    }
};

}  // namespace matwright

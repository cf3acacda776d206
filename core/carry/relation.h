// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "core/carry/footprint.h"

namespace matwright::carry {

enum class RelationKind {
    OnPageEdge,        // an edge on the page's edge
    OnMargin,          // an edge on the margin
    Gutter,            // neighbours a gutter apart, from mat edge to mat edge
    Flush,             // neighbours that touch
    InLine,            // same edges of several pieces in one line
    CentredOnPage,     // trims
    CentredInMargins,  // trims; where that is not the page's middle
    CentredOnFold,     // trims, on the middle of a double page
    EqualGaps,         // a piece with the same gap on both sides, other than the gutter
    CentredTogether,   // trims
};

enum class End { Low, High };

// What people would see as a rule of the design, along one axis. Edges count exactly, middles
// within a tick, equal gaps within two.
struct Relation {
    RelationKind kind = RelationKind::InLine;
    Axis axis = Axis::X;
    std::vector<std::size_t> pieces;  // indices of footprints; neighbours from low to high
    End end = End::Low;               // of edges
    bool outer = true;                // of edges: the outermost one, or the trim
    std::size_t page = 0;             // of page edges, margins and pages' middles
    bool onDouble = false;            // found on a double page
};

// All relations of pieces that lie at least in part on the surface. Pieces turned by no multiple of
// 90 degrees have only those of page edges, margins and middles. What follows from another relation
// of the list may be left out.
std::vector<Relation> relationsOf(const std::vector<Footprint>& pieces, const PageSetup& setup);

bool holds(const Relation& relation, const std::vector<Footprint>& pieces, const PageSetup& setup);

// Where the page edge or margin of the relation is, or twice the middle; nothing where the setup
// has none: a single page has no fold.
std::optional<Length> anchorOf(const Relation& relation, const PageSetup& setup);

}  // namespace matwright::carry

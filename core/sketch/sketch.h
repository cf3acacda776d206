// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/error/error.h"
#include "core/sketch/piece.h"

namespace matwright {

struct Margins {
    Length left, top, right, bottom;
    static constexpr Margins all(Length width) { return {width, width, width, width}; }
    friend constexpr bool operator==(const Margins&, const Margins&) = default;
};

// The paper a sketch is drawn on. A double page is two facing pages of this size planned as one
// sheet of coordinates: left page, fold gap, right page.
struct PageSetup {
    Size size = {Length::inches(12), Length::inches(12)};  // of one page
    bool doublePage = false;
    Length foldGap;  // zero or more; only a double page has one
    Margins margins = Margins::all(Length::inches(0, 1, 2));
    Length gutter = Length::inches(0, 1, 4);  // the gap wished between neighbours; zero or more
    friend bool operator==(const PageSetup&, const PageSetup&) = default;
};

// The whole surface: the page, or both pages and the fold gap between them.
Rect surface(const PageSetup& setup);
// The page rectangles from left to right: one, or two.
std::vector<Rect> pages(const PageSetup& setup);
// Which of `pages`, from left to right and at least one, the distances of a piece are measured from
// whose left end is at `left`: the last that begins there or before it. What sticks out to the left
// belongs to the first.
std::size_t pageOf(const std::vector<Rect>& pages, Length left);
// The rectangles inside the margins. Of a double page the fold has no margin of its own: the left
// page keeps its right margin and the right page its left one, at the fold too.
std::vector<Rect> insideMargins(const PageSetup& setup);

// A reusable diagram of a page, as a regular value: no photos, no file, no selection.
struct Sketch {
    std::string name;
    std::string note;
    PageSetup page;
    std::map<PieceId, Piece> pieces;
    std::vector<PieceId> order;  // every id of `pieces` exactly once, bottom to top

    friend bool operator==(const Sketch&, const Sketch&) = default;
};

inline constexpr std::size_t maxPieces = 20'000;
inline constexpr PieceId maxPieceId{1'000'000'000};
inline constexpr std::size_t maxTextBytes = 10'000;  // of a name, note or paper
inline constexpr std::size_t maxPolygonCorners = 1'000;

// One past the largest id in use; PieceId{1} in an empty sketch. Where the largest is maxPieceId,
// the smallest that is free.
PieceId nextId(const Sketch& sketch);
// nullptr where there is no such piece.
const Piece* find(const Sketch& sketch, PieceId id);
// 1 for the bottom piece, up to the number of pieces; 0 where there is no such piece. This is the
// number a template shows: the order in which the pieces are laid down.
std::size_t pieceNumber(const Sketch& sketch, PieceId id);

// A new sketch on one 12x12 page with 1/2 in margins and a 1/4 in gutter.
Sketch blankSketch();

}  // namespace matwright

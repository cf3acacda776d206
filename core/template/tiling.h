// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/error/error.h"
#include "core/sketch/sketch.h"

namespace matwright {

struct TilingOptions {
    Size sheet = {Length::inches(8, 1, 2), Length::inches(11)};  // upright, as in the catalogue
    Length printerMargin =
        Length::inches(0, 1, 4);               // on all four sides; what the printer cannot reach
    Length overlap = Length::inches(0, 1, 4);  // shared by neighbouring tiles; 0 or more
};

// The page a tile is part of.
enum class TiledPage { Whole, Left, Right };  // Whole: all of the drawing

// One sheet of a page that is printed in parts.
struct Tile {
    int row = 0;     // from the page's top, 0 first
    int column = 0;  // from the page's left
    Rect window;     // which part of the drawing this sheet shows, in the drawing's coordinates
    TiledPage page = TiledPage::Whole;
    // "A1", "B2", …: row letter, column number; "left A1", "right A1" on a double page.
    std::string name() const;
};

struct TilePlan {
    Size sheet;  // as it lies: turned where that needs fewer sheets
    bool turned = false;
    Length printerMargin;
    Length overlap;
    Size page;                // what is cut into rows and columns: the drawing, or each page of it
    int rows = 0;             // of one page
    int columns = 0;          // of one page
    std::vector<Tile> tiles;  // row by row; all of the left page first

    bool isPageByPage() const;
    // The windows without the strips where the joining crosses are, for TemplateOptions::parts.
    // A window that is all strip has no part.
    std::vector<Rect> parts() const;
};

// Per axis 1 sheet if the length L fits the printable length P, else ceil((L - o) / (P - o)); both
// sheet directions are tried, upright wins a tie. Errors: OutOfRange when margins or overlap leave
// no room for a step of at least 1/2 in, or above 400 sheets.
Result<TilePlan> planTiles(Size drawing, const TilingOptions& options);
// The tiles of a template. A double page is tiled page by page, as each page is glued by itself: no
// tile runs across the fold, and nothing but the fold gap is left out. Only where one sheet holds
// both pages they stay together.
Result<TilePlan> planTiles(const PageSetup& page, const TilingOptions& options);

// The sheet to print: the window of `drawing` at true size inside the printer margins, its name,
// joining crosses, trim-here lines on the sides that join, a small map of the whole, and two
// rulers, 1 in and 50 mm. Items outside the window are left out, and so are check squares that it
// does not hold whole; a white frame covers what crosses the window's edge, the marks are drawn
// over it.
Drawing tileDrawing(const Drawing& drawing, const TilePlan& plan, const Tile& tile);

}  // namespace matwright

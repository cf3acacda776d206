// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/sketch/sketch.h"
#include "tests/support/starters/measures.h"

namespace matwright::test {

// The words the starter sketches are written in. Photos are placed by the outer edge of their last
// mat, so that gutters run from mat edge to mat edge.
//
// With 1/4 in gutters one rule lines everything up: a matted focal photo of twice a small photo's
// side is as long as two small photos with the gutter between them, and so is a double-matted one
// of two small matted ones.

PageSetup page12();
PageSetup page8();
PageSetup letterUpright();
PageSetup letterLying();
PageSetup a4Upright();
PageSetup a4Lying();
// Two such pages with 1/2 in between them.
PageSetup facing(PageSetup setup);
PageSetup withMargin(PageSetup setup, Length margin);
// Where x is on the right one of two facing pages.
Length onTheRight(const PageSetup& setup, Length x);

Piece photo(Size print);
// A square or smaller trim out of a print.
Piece trimmed(Size print, Size trim);
// One mat of 1/8 in (3 mm for a print in whole centimetres), or of `border`.
Piece matted(Piece photo);
Piece matted(Piece photo, Length border);
// A mat of 1/8 in on one of 1/4 in (3 mm on 6 mm).
Piece doubleMatted(Piece photo);
// One mat with a wide border below, as for a caption.
Piece bottomHeavy(Piece photo, Length border, Length bottom);
// The photo the page is about; at most one a sketch.
Piece focal(Piece photo);
Piece round(Piece piece);
Piece turned(Piece piece, std::int64_t millidegrees);
std::vector<Piece> times(int count, const Piece& piece);

// Where a cluster of ornaments trails off to.
enum class Trail { Right, Down, Up };

class Layout {
  public:
    Layout(std::string name, std::string note, PageSetup page);

    // Each returns the outer box of what it laid down.
    Rect strip(Rect box);
    Rect block(Rect box);
    Rect roundBlock(Rect box);
    Rect title(Rect box);
    Rect roundTitle(Rect box);
    Rect journaling(Rect box);
    // A place for an ornament: a round one of this diameter about a centre.
    Rect spot(Point centre, Length diameter);
    // A large one and two smaller ones that touch it; inch pages only.
    void cluster(Point centre, Length diameter, Trail trail);
    // Three of them in a line to the right, a diameter and a third apart.
    void spots(Point firstCentre, Length diameter);
    // A hanging pennant: an ornament with a notch below.
    Rect pennant(Rect box);

    // The outer box begins at `place`, its top left corner.
    Rect lay(Piece piece, Point place);
    // One gutter apart from left to right with their tops in line, or from top to bottom with their
    // left sides in line; `place` is the first one's corner.
    Rect row(Point place, const std::vector<Piece>& pieces);
    Rect column(Point place, const std::vector<Piece>& pieces);
    // Rows of `columns` equal pieces, filled row by row.
    Rect grid(Point place, int columns, const std::vector<Piece>& pieces);

    Sketch take() { return std::move(m_sketch); }

  private:
    Rect add(PieceKind kind, Rect box, Shape shape, std::string paper);

    Sketch m_sketch;
};

}  // namespace matwright::test

// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/sketch/sketch.h"

namespace matwright {

// A page, or pages, papers are cut for. Of a page in the making its sketch is enough.
struct PaperPage {
    std::string name;  // as it is said in sentences
    Sketch sketch;
    // How its papers look, by their words (PaperLook::colour); may be empty.
    std::map<std::string, Colour> colours = {};
};

enum class FoldSide { Whole, Left, Right };

// One thing that is cut from craft paper.
struct PaperPiece {
    std::size_t page = 0;  // index of the pages
    PieceId piece;
    std::optional<std::size_t> mat;   // which mat of that piece; nothing: the piece itself
    FoldSide side = FoldSide::Whole;  // of a piece parted by the fold
    std::string name;                 // "mat under Beach", "strip 12 × 2 in, left page"
    std::string paper;                // in the page's words; empty: it needs a paper
    // What the trimmer cuts: the unturned box (with a mat's borders). A piece that is turned by
    // quarter turns has it as it lies on the page.
    Size size;
    bool isAngled = false;  // turned by something else than quarter turns
    // What is to be done by hand after the trimmer: "Then cut the oval out of it by hand or with a
    // machine."; empty for rectangles.
    std::string byHand;
    std::string remark;  // what else to know of it, a sentence; may be empty
    // What may be cut out of it and used: covered by the next layer, less the glue edge on each
    // side. Measured from the top left corner of `size`. Only of gutted mats that are rectangles.
    std::optional<Rect> middle;
    // Of a mat whose middle cannot be used, gutted or not: why, a sentence. Else empty.
    std::string noMiddle;
    friend bool operator==(const PaperPiece&, const PaperPiece&) = default;
};

// Everything that is cut from craft paper: every mat, strip and block; titles, journaling and
// embellishments where they name a paper. In the order of the pages, from bottom to top, outer mats
// before inner ones.
//
// A piece of a double page that lies on both pages is parted at the fold where it is a rectangle
// turned by no more than quarter turns: each page gets its own part up to its edge, and what would
// lie over the fold gap is not cut. One that lies on one page and reaches only into the gap is cut
// at its page's edge. Anything else that lies over the fold gap is cut in one piece. The remark
// says what was done. A middle is at least `smallestMiddle` either way; `glueEdge` is 0 or more.
inline constexpr Length smallestMiddle = Length::inches(0, 1, 2);
std::vector<PaperPiece> paperPieces(std::span<const PaperPage> pages, Length glueEdge);

}  // namespace matwright

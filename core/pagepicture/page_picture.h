// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/making/making.h"

namespace matwright {

// How the finished page looks, as data: what lies where, from bottom to top. No pixels and no files
// here; one painter draws it at any size.

// A box that is turned about a place: where a picture is laid down. Unturned, in page ticks.
struct LaidBox {
    Rect box;
    Angle rotation;  // clockwise, about `centre`
    Vertex centre;
    friend bool operator==(const LaidBox&, const LaidBox&) = default;
};

// Paper with a picture: its top left corner at the box's, `look.pictureWidth` wide, repeated to the
// right and down; turned with the piece. Where the picture is out of reach, its colour.
struct PaperFill {
    PaperLook look;
    LaidBox at;
    friend bool operator==(const PaperFill&, const PaperFill&) = default;
};

// A photo: what `shown` gives of it fills the window's box. What of the outline is outside of that
// box is white (the print's border). Across the fold of a double page a photo is two of these that
// meet: each shows its share of the window as it were without the gap, `whole`, from left to right.
struct PhotoFill {
    PhotoId photo;
    Crop crop;
    CropWindow shown;  // of the whole
    LaidBox window;
    Size whole;
    double from = 0;
    double to = 1;
};

// As a sketch shows it: a free slot, lettering, an ornament whose paper has no look. The outline is
// in the items too.
struct SketchFill {
    std::vector<DrawingItem> items;
};

enum class PagePart { Page, Mat, Piece };

struct PagePiece {
    PagePart part = PagePart::Page;
    PieceId piece;        // none: the page itself
    std::size_t mat = 0;  // of a mat: its index in the piece
    Path outline;         // in page ticks, turned; fills are clipped to it
    std::variant<Colour, PaperFill, PhotoFill, SketchFill> fill;
    std::optional<Stroke> edge;  // a faint line where paper would not stand out from paper
};

// The page (both pages of a double one) and every piece with its mats. Precondition: the page is
// sound.
std::vector<PagePiece> pagePicture(const Making& making);

// The parts of one piece as it would look with this shape and this placement (null: no photo), for
// showing a change before it is made. The placement's photo is in the tray.
std::vector<PagePiece> piecePicture(const PhotoWork& work, const PageSetup& page, PieceId id,
                                    const Piece& piece, const Placement* placement);

// The box of a slot's window and how it is turned.
LaidBox windowBox(const Piece& slot, Length border);

}  // namespace matwright

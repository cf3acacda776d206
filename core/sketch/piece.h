// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/measure/angle.h"
#include "core/measure/rect.h"

namespace matwright {

// Names one piece of one sketch for as long as the sketch lives; 0 is no piece.
struct PieceId {
    std::uint32_t value = 0;
    friend constexpr auto operator<=>(PieceId, PieceId) = default;
};

enum class PieceKind { PhotoSlot, Strip, Block, Title, Journaling, Embellishment };
inline constexpr PieceKind allPieceKinds[] = {PieceKind::PhotoSlot,  PieceKind::Strip,
                                              PieceKind::Block,      PieceKind::Title,
                                              PieceKind::Journaling, PieceKind::Embellishment};
// "photo slot", "strip", … in plain English, lower case.
std::string_view kindName(PieceKind kind);

// Shapes fill the piece's box.
struct RectangleShape {
    friend bool operator==(const RectangleShape&, const RectangleShape&) = default;
};
// 0 < radius; drawn no larger than half the shorter side.
struct RoundedRectangleShape {
    Length radius;
    friend bool operator==(const RoundedRectangleShape&, const RoundedRectangleShape&) = default;
};
// The ellipse that touches the box's four sides; a circle in a square box.
struct OvalShape {
    friend bool operator==(const OvalShape&, const OvalShape&) = default;
};
// Three or more corners, measured from the box's top left corner, each inside the box or on its
// edge. The outline does not cross itself.
struct PolygonShape {
    std::vector<Point> corners;
    friend bool operator==(const PolygonShape&, const PolygonShape&) = default;
};
using Shape = std::variant<RectangleShape, RoundedRectangleShape, OvalShape, PolygonShape>;

// Paper under a photo, larger by a border on every side. Of two mats the first lies right under
// the photo and the second under the first, its border measured from the first one's edge.
struct Mat {
    Length border;                       // positive
    std::optional<Length> bottomBorder;  // positive; where it differs from `border`
    std::string paper;                   // what it is cut from, in the user's words; may be empty
    bool gutted = false;                 // the hidden middle may be cut out and used
    friend bool operator==(const Mat&, const Mat&) = default;
};
inline constexpr std::size_t maxMats = 2;

// One thing laid on the page, as a regular value.
//
// `place` and `size` give the unturned trim box: what is left after cutting. The piece is then
// turned by `rotation` about the centre of that box. Mats turn with it.
struct Piece {
    PieceKind kind = PieceKind::Block;
    Point place;
    Size size;
    Angle rotation;
    Shape shape;
    // Photo slots only: the size that is printed, width along the box's width. The trim is cut from
    // its middle.
    std::optional<Size> printSize;
    // Photo slots only; at most maxMats.
    std::vector<Mat> mats;
    // Strips, blocks and the like: the paper it is cut from, in the user's words; may be empty.
    std::string paper;
    std::string name;
    std::string note;
    bool locked = false;

    friend bool operator==(const Piece&, const Piece&) = default;
};

// Whether it is patterned paper or cardstock laid under other things: a strip or a block.
inline bool isPaper(const Piece& piece) {
    return piece.kind == PieceKind::Strip || piece.kind == PieceKind::Block;
}

// The unturned trim box.
Rect trimBox(const Piece& piece);
// The unturned box of mat `index` (0 is right under the photo); index < mats.size().
Rect matBox(const Piece& piece, std::size_t index);
// The unturned box of the last mat, or the trim box where there is none.
Rect outermostBox(const Piece& piece);
// The unturned box of the print, centred on the trim (rounded down by at most half a tick); the
// trim box where there is no print.
Rect printBox(const Piece& piece);
// The smallest upright box around `box` turned by the piece's rotation about its trim centre, each
// edge rounded outwards to a tick. Exact for quarter turns of even-tick boxes.
Rect turnedBounds(const Piece& piece, const Rect& box);
// turnedBounds of the trim box and of the outermost box. They bound the box, so they are looser
// than the outline of a turned oval or polygon.
Rect trimBounds(const Piece& piece);
Rect outermostBounds(const Piece& piece);

// The piece with its box set to `box`; polygon corners are scaled with it (rounded to a tick), a
// radius stays. `box` must have a positive size.
Piece withBox(Piece piece, const Rect& box);

// "photo slot 4 × 6 in", or the piece's own name where it has one.
std::string displayName(const Piece& piece);

}  // namespace matwright

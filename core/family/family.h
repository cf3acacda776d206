// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/sketch/sketch.h"

namespace matwright {

// Two sketches are of one family when they are the same but for a mirror, a turn (all eight ways a
// square page can lie; quarter turns also between a page size and the same one turned) or tiny
// shifts. Names, notes, papers, margins, gutters, locks and the stacking order do not matter; page
// size, double page, and of each piece its kind, shape, print size and number of mats do.
inline constexpr Length familyPlaceTolerance = Length::inches(0, 1, 4);  // of middles, an axis each
inline constexpr Length familySizeTolerance = Length::inches(0, 1, 8);   // of trims, a side each
inline constexpr Angle familyAngleTolerance = Angle::degrees(2);

// One piece as far as families go. Middles and corners are doubled, so that halves are whole ticks.
struct FamilyPiece {
    PieceKind kind = PieceKind::Block;
    std::uint8_t shape = 0;  // index in Shape
    std::uint8_t mats = 0;
    Size print;    // as it lies; zero where there is none
    Point middle;  // of the outermost box, from the middle of the whole surface
    Size size;     // of the trim
    Angle rotation;
    std::vector<Point> corners;  // of a polygon, from the middle of the trim box
    friend bool operator==(const FamilyPiece&, const FamilyPiece&) = default;
};

// What an index keeps of a sketch so that no file has to be read again: compact, comparable,
// storable.
struct FamilyTraits {
    Size page;  // of one page
    bool doublePage = false;
    std::vector<FamilyPiece> pieces;  // in order of their ids

    friend bool operator==(const FamilyTraits&, const FamilyTraits&) = default;

    // The same for all sketches of a family (and for some others): made of exact facts only. So
    // when one sketch changes, only those with its old or its new key have to be looked at again.
    std::uint64_t key() const;

    std::string toBytes() const;
    // Error: Malformed where the bytes are not what toBytes() gives.
    static Result<FamilyTraits> fromBytes(std::string_view bytes);
};

FamilyTraits familyTraits(const Sketch& sketch);

bool isSameFamily(const FamilyTraits& a, const FamilyTraits& b);
bool isSameFamily(const Sketch& a, const Sketch& b);

// For each of them the number of its family, from 1 in order of first members; 0 for one that is
// alone. A family is joined from pairs, so its ends may differ by more than the tolerances. Groups
// by key, so thousands are quick; a part (all sketches of one key) can be asked alone.
std::vector<int> familiesOf(std::span<const FamilyTraits> sketches);

}  // namespace matwright

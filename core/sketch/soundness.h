// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "core/sketch/sketch.h"

namespace matwright {

// Of pieces, prints and polygons' boxes. 1/64 in is half a tick off the grid; what people type as
// 1/64 rounds to this.
inline constexpr Length smallestSide = Length::inches(0, 1, 64);
inline constexpr Length largestSide = Length::inches(200);
inline constexpr Length largestBorder = Length::inches(20);  // of a mat; the least is smallestSide
inline constexpr Length smallestPageSide = Length::inches(1);
inline constexpr Length largestPageSide = Length::inches(100);

// The rules every sketch in the program keeps; used by the file reader, by apply() and by debug
// asserts. Returns the first rule broken (code Malformed, `where` names the piece), or nothing.
//
// - page sides between 1 in and 100 in; fold gap 0..10 in and only on a double page; margins 0 or
//   more and leaving a positive area; gutter 0..10 in
// - order lists every piece exactly once; ids are not 0; at most maxPieces pieces
// - piece sides between 1/64 in and 200 in; every edge within +-Length::coordinateLimit()
// - only photo slots have a print size (required there) and mats; borders 1/64..20 in
// - rounded corners have a positive radius, at most 200 in; polygons have 3..maxPolygonCorners
//   corners inside their box, and do not cross or touch themselves, so they have an area
// - texts are valid UTF-8 without control characters (note may have line breaks), at most
//   maxTextBytes
std::optional<Error> findFault(const Sketch& sketch);
std::optional<Error> findFault(const PageSetup& setup);
std::optional<Error> findFault(const Piece& piece);

bool isValidText(std::string_view text, bool lineBreaksAllowed);

}  // namespace matwright

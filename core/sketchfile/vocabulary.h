// SPDX-License-Identifier: MIT
#pragma once

#include "core/sketch/piece.h"

namespace matwright::words {

// The words of the sketch file, version 1. They never change; a word of another meaning gets
// another version. No element is called as one of SVG: some viewers do not look at namespaces.

inline constexpr const char* sketch = "sketch";
inline constexpr const char* version = "version";
inline constexpr const char* unit = "unit";
// What a whole number counts wherever the model gives a length.
inline constexpr const char* unitValue = "1/914400 in";

inline constexpr const char* name = "name";
inline constexpr const char* note = "note";
inline constexpr const char* paper = "paper";

inline constexpr const char* page = "page";
inline constexpr const char* width = "width";
inline constexpr const char* height = "height";
inline constexpr const char* gutter = "gutter";
inline constexpr const char* foldGap = "fold-gap";  // only a double page has it
inline constexpr const char* margins = "margins";
inline constexpr const char* left = "left";
inline constexpr const char* top = "top";
inline constexpr const char* right = "right";
inline constexpr const char* bottom = "bottom";

inline constexpr const char* pieces = "pieces";
inline constexpr const char* piece = "piece";
inline constexpr const char* id = "id";
inline constexpr const char* kind = "kind";
inline constexpr const char* x = "x";
inline constexpr const char* y = "y";
inline constexpr const char* turn = "turn";
inline constexpr const char* locked = "locked";
inline constexpr const char* shape = "shape";
inline constexpr const char* radius = "radius";
inline constexpr const char* corners = "corners";
inline constexpr const char* print = "print";
inline constexpr const char* mat = "mat";
inline constexpr const char* border = "border";
inline constexpr const char* gut = "gut";

inline constexpr const char* yes = "yes";
inline constexpr const char* no = "no";

struct KindWord {
    PieceKind kind;
    const char* word;
};
inline constexpr KindWord kindWords[] = {
    {PieceKind::PhotoSlot, "photo-slot"},  {PieceKind::Strip, "strip"},
    {PieceKind::Block, "block"},           {PieceKind::Title, "title"},
    {PieceKind::Journaling, "journaling"}, {PieceKind::Embellishment, "embellishment"},
};

// In the order of the Shape variant.
inline constexpr const char* shapeWords[] = {"rectangle", "rounded-rectangle", "oval", "polygon"};
static_assert(std::size(shapeWords) == std::variant_size_v<Shape>);

}  // namespace matwright::words

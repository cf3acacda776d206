// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "core/sheets/search/reduced.h"

namespace matwright::sheets {

// How the pieces of one sheet lie: a slicing tree over Reduced's units. A leaf is one piece, a row
// lays two groups side by side, a stack one above the other; groups start in a common corner, so
// the smaller one leaves waste beside it.
struct Group {
    enum class Form : std::uint8_t { Piece, Row, Stack };
    Form form = Form::Piece;
    bool turned = false;
    std::int32_t w = 0;
    std::int32_t h = 0;
    std::int32_t kind = -1;   // of a piece: index of Reduced's kinds
    std::int32_t first = -1;  // of a row or stack: indexes of earlier groups
    std::int32_t second = -1;
};

// The last group is the whole; an empty layout is an empty sheet.
using Layout = std::vector<Group>;

// Adds a leaf or a joint at the end and gives its index.
std::int32_t addPiece(Layout& layout, const Kind& kind, int index, bool turned);
std::int32_t addJoint(Layout& layout, Group::Form form, std::int32_t first, std::int32_t second);

// Rows become stacks and widths heights.
Layout flipped(Layout layout);
Reduced flipped(Reduced reduced);

// How many of each kind lie there.
std::vector<int> contents(const Layout& layout, std::size_t kinds);

// The sheets of one paper: which stock, and how its pieces lie.
struct FilledSheet {
    int stock = 0;
    Layout layout;
};

}  // namespace matwright::sheets

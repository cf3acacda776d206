// SPDX-License-Identifier: MIT
#include "core/sheets/search/layout.h"

#include <algorithm>
#include <utility>

namespace matwright::sheets {

std::int32_t addPiece(Layout& layout, const Kind& kind, int index, bool turned) {
    Group group;
    group.turned = turned;
    group.w = turned ? kind.h : kind.w;
    group.h = turned ? kind.w : kind.h;
    group.kind = index;
    layout.push_back(group);
    return static_cast<std::int32_t>(layout.size()) - 1;
}

std::int32_t addJoint(Layout& layout, Group::Form form, std::int32_t first, std::int32_t second) {
    const Group& a = layout[static_cast<std::size_t>(first)];
    const Group& b = layout[static_cast<std::size_t>(second)];
    Group group;
    group.form = form;
    const bool row = form == Group::Form::Row;
    group.w = row ? a.w + b.w : std::max(a.w, b.w);
    group.h = row ? std::max(a.h, b.h) : a.h + b.h;
    group.first = first;
    group.second = second;
    layout.push_back(group);
    return static_cast<std::int32_t>(layout.size()) - 1;
}

Layout flipped(Layout layout) {
    for (Group& group : layout) {
        std::swap(group.w, group.h);
        if (group.form != Group::Form::Piece) {
            group.form = group.form == Group::Form::Row ? Group::Form::Stack : Group::Form::Row;
        }
    }
    return layout;
}

Reduced flipped(Reduced reduced) {
    for (Kind& kind : reduced.kinds) {
        std::swap(kind.w, kind.h);
    }
    for (Stock& stock : reduced.stocks) {
        std::swap(stock.w, stock.h);
    }
    return reduced;
}

std::vector<int> contents(const Layout& layout, std::size_t kinds) {
    std::vector<int> counts(kinds, 0);
    for (const Group& group : layout) {
        if (group.form == Group::Form::Piece) {
            ++counts[static_cast<std::size_t>(group.kind)];
        }
    }
    return counts;
}

}  // namespace matwright::sheets

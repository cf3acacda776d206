// SPDX-License-Identifier: MIT
#include <algorithm>
#include <tuple>

#include "core/arrange/arrange.h"
#include "core/arrange/selected.h"

namespace matwright {

namespace {

// A piece seen along one direction.
struct Member {
    PieceId id;
    const Piece* piece;
    Interval extent;  // of its outermost bounds
};

Interval along(const Rect& rect, Direction direction) {
    return direction == Direction::Across ? rect.x : rect.y;
}

// In the order of their near edges, then far edges, then ids.
std::vector<Member> rowOf(const Sketch& sketch, std::span<const PieceId> ids, Direction direction) {
    std::vector<Member> row;
    for (const auto& [id, piece] : arrange::selectedPieces(sketch, ids)) {
        row.push_back({id, piece, along(outermostBounds(*piece), direction)});
    }
    std::ranges::sort(
        row, {}, [](const Member& m) { return std::tuple(m.extent.low, m.extent.high, m.id); });
    return row;
}

void moveTo(Edit& edit, const Member& member, Length low, Direction direction) {
    const Length by = low - member.extent.low;
    if (by.isZero()) {
        return;
    }
    Piece after = *member.piece;
    (direction == Direction::Across ? after.place.x : after.place.y) += by;
    edit.pieces.emplace(member.id, std::move(after));
}

Length dividedDown(Length length, std::int64_t parts) {
    const std::int64_t t = length.ticks();
    return Length::fromTicks(t / parts - (t % parts < 0 ? 1 : 0));
}

// Spreads the members between the first and the last of the run, which stay.
void spreadRun(Edit& edit, std::span<const Member> run, Direction direction) {
    const auto gaps = static_cast<std::int64_t>(run.size()) - 1;
    Length room = run.back().extent.low - run.front().extent.high;
    for (const Member& member : run.subspan(1, run.size() - 2)) {
        room -= member.extent.length();
    }
    const Length gap = dividedDown(room, gaps);
    const std::int64_t larger = (room - gap * gaps).ticks();
    Length end = run.front().extent.high;
    for (std::int64_t i = 0; i + 1 < gaps; ++i) {
        const Member& member = run[static_cast<std::size_t>(i) + 1];
        const Length low = end + gap + Length::fromTicks(i >= gaps - larger ? 1 : 0);
        moveTo(edit, member, low, direction);
        end = low + member.extent.length();
    }
}

}  // namespace

Edit spreadEvenly(const Sketch& sketch, std::span<const PieceId> ids, Direction direction) {
    const std::vector<Member> row = rowOf(sketch, ids, direction);
    Edit edit;
    std::size_t from = 0;
    for (std::size_t to = 1; to < row.size(); ++to) {
        if (row[to].piece->locked || to + 1 == row.size()) {
            spreadRun(edit, std::span(row).subspan(from, to - from + 1), direction);
            from = to;
        }
    }
    return edit;
}

Edit spreadByGutter(const Sketch& sketch, std::span<const PieceId> ids, Direction direction) {
    const std::vector<Member> row = rowOf(sketch, ids, direction);
    Edit edit;
    Length end;
    for (const Member& member : row) {
        const bool stays = member.id == row.front().id || member.piece->locked;
        const Length low = stays ? member.extent.low : end + sketch.page.gutter;
        moveTo(edit, member, low, direction);
        end = low + member.extent.length();
    }
    return edit;
}

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/snap/snap.h"

namespace matwright::test {

constexpr Length in(std::int64_t whole) {
    return Length::inches(whole);
}
// Sixteenths of an inch.
constexpr Length six(std::int64_t n) {
    return Length::inches(0, n, 16);
}
constexpr Length tick = Length::fromTicks(1);
constexpr SnapEdges move{};
constexpr SnapEdges resizeRight{false, true, false, false};
constexpr SnapEdges resizeLeft{true, false, false, false};
constexpr SnapEdges resizeBottom{false, false, false, true};

// In inches: left, top, width, height.
Rect box(std::int64_t left, std::int64_t top, std::int64_t width, std::int64_t height);
SnapBox bare(const Rect& trim);
SnapBox matted(const Rect& trim, Length border);

// A 12x12 page with 1/2 in margins and a 1/4 in gutter, ids 1, 2, … from bottom to top.
Sketch sceneOf(const std::vector<Rect>& blocks);
Sketch doublePage(Length foldGap);
void addMattedSlot(Sketch& sketch, const Rect& trim, Length border);

// All settings off, reach 1/8 in.
SnapSettings nothing();

// What one rule offers along one axis.
template <typename Rule>
std::vector<SnapCandidate> offered(Axis axis, const Sketch& sketch, const SnapBox& box,
                                   const SnapEdges& edges = move,
                                   const SnapSettings& settings = nothing()) {
    std::vector<SnapCandidate> all;
    Rule().addCandidates(SnapContext(sketch, {}), box, edges, settings, all);
    std::erase_if(all, [&](const SnapCandidate& c) { return c.axis != axis; });
    return all;
}

}  // namespace matwright::test

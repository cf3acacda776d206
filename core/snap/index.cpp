// SPDX-License-Identifier: MIT
#include "core/snap/index.h"

#include <algorithm>
#include <set>

namespace matwright {

namespace snapping {

namespace {

constexpr std::size_t longestName = 40;  // bytes

// Cut at a character's first byte (UTF-8).
std::string shortened(const std::string& name) {
    if (name.size() <= longestName) {
        return name;
    }
    std::size_t end = longestName;
    while (end > 0 && (static_cast<unsigned char>(name[end]) & 0xC0) == 0x80) {
        --end;
    }
    return name.substr(0, end) + "\u2026";
}

std::vector<Neighbour> stillNeighbours(const Sketch& sketch, std::span<const PieceId> moving) {
    const std::set<PieceId> left(moving.begin(), moving.end());
    std::vector<Neighbour> neighbours;
    for (std::size_t i = 0; i < sketch.order.size(); ++i) {
        if (left.contains(sketch.order[i])) {
            continue;
        }
        const Piece& piece = sketch.pieces.at(sketch.order[i]);
        neighbours.push_back(
            {trimBounds(piece), outermostBounds(piece), i + 1, piece.kind, piece.name});
    }
    return neighbours;
}

// One edge for each neighbour that `wanted` holds for, at the place `place` gives.
template <typename Place, typename Wanted>
void addEdges(std::vector<Edge>& edges, const std::vector<Neighbour>& neighbours, Axis axis,
              Rect Neighbour::* box, Place place, Wanted wanted) {
    for (std::uint32_t i = 0; i < neighbours.size(); ++i) {
        const Rect& rect = neighbours[i].*box;
        if (wanted(neighbours[i])) {
            edges.push_back({place(along(rect, axis)), across(rect, axis), i});
        }
    }
}

constexpr auto low = [](Interval i) { return i.low; };
constexpr auto high = [](Interval i) { return i.high; };
constexpr auto centre = [](Interval i) { return i.centreRoundedDown(); };
constexpr auto any = [](const Neighbour&) { return true; };
constexpr auto matted = [](const Neighbour& n) { return n.outermost != n.trim; };

AxisIndex axisIndex(const std::vector<Neighbour>& neighbours, Axis axis) {
    std::vector<Edge> trims, centres, outermost, mats, lows, highs;
    addEdges(trims, neighbours, axis, &Neighbour::trim, low, any);
    addEdges(trims, neighbours, axis, &Neighbour::trim, high, any);
    addEdges(centres, neighbours, axis, &Neighbour::trim, centre, any);
    addEdges(mats, neighbours, axis, &Neighbour::outermost, low, matted);
    addEdges(mats, neighbours, axis, &Neighbour::outermost, high, matted);
    addEdges(lows, neighbours, axis, &Neighbour::outermost, low, any);
    addEdges(highs, neighbours, axis, &Neighbour::outermost, high, any);
    outermost = lows;
    outermost.insert(outermost.end(), highs.begin(), highs.end());
    return {EdgeList(std::move(trims)),     EdgeList(std::move(centres)),
            EdgeList(std::move(outermost)), EdgeList(std::move(mats)),
            FacingEdges(std::move(lows)),   FacingEdges(std::move(highs))};
}

SnapContext::Index indexOf(const Sketch& sketch, std::span<const PieceId> moving) {
    std::vector<Neighbour> neighbours = stillNeighbours(sketch, moving);
    AxisIndex horizontal = axisIndex(neighbours, Axis::Horizontal);
    AxisIndex vertical = axisIndex(neighbours, Axis::Vertical);
    return {sketch.page,           pages(sketch.page),    insideMargins(sketch.page),
            std::move(neighbours), std::move(horizontal), std::move(vertical)};
}

}  // namespace

std::string labelOf(const Neighbour& neighbour) {
    const std::string name =
        neighbour.name.empty() ? std::string(kindName(neighbour.kind)) : shortened(neighbour.name);
    return std::to_string(neighbour.number) + " \u00B7 " + name;
}

}  // namespace snapping

SnapContext::SnapContext(const Sketch& sketch, std::span<const PieceId> moving)
    : m_index(std::make_unique<Index>(snapping::indexOf(sketch, moving))) {}
SnapContext::~SnapContext() = default;
SnapContext::SnapContext(SnapContext&&) noexcept = default;
SnapContext& SnapContext::operator=(SnapContext&&) noexcept = default;

}  // namespace matwright

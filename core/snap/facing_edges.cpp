// SPDX-License-Identifier: MIT
#include <algorithm>
#include <boost/geometry.hpp>
#include <boost/geometry/index/rtree.hpp>
#include <iterator>
#include <utility>

#include "core/snap/edge_list.h"

namespace matwright::snapping {

namespace {

namespace bg = boost::geometry;
namespace bgi = boost::geometry::index;

// x is the place of an edge, y its span. Squared distances stay below 2^63 within the coordinate
// limit.
using TreePoint = bg::model::point<std::int64_t, 2, bg::cs::cartesian>;
using TreeBox = bg::model::box<TreePoint>;
using TreeValue = std::pair<TreeBox, std::uint32_t>;

constexpr int walkedSteps = 16;

Length withinLimit(Length v) {
    return std::clamp(v, -Length::coordinateLimit(), Length::coordinateLimit());
}

TreeBox treeBox(Interval places, Interval band) {
    return {{withinLimit(places.low).ticks(), withinLimit(band.low).ticks()},
            {withinLimit(places.high).ticks(), withinLimit(band.high).ticks()}};
}

}  // namespace

struct FacingEdges::Tree {
    bgi::rtree<TreeValue, bgi::quadratic<16>> values;
};

FacingEdges::FacingEdges(std::vector<Edge> edges)
    : m_list(std::move(edges)), m_tree(std::make_unique<Tree>()) {
    std::vector<TreeValue> values;
    values.reserve(m_list.edges().size());
    for (std::uint32_t i = 0; i < m_list.edges().size(); ++i) {
        const Edge& edge = m_list.edges()[i];
        values.emplace_back(treeBox({edge.at, edge.at}, edge.across), i);
    }
    m_tree->values = decltype(m_tree->values)(values);
}

FacingEdges::~FacingEdges() = default;
FacingEdges::FacingEdges(FacingEdges&&) noexcept = default;
FacingEdges& FacingEdges::operator=(FacingEdges&&) noexcept = default;

// The walk from place to place pays where most edges meet the band, since it stops at the first;
// the tree pays where hardly any do, since it passes over whole stretches. So many steps cost about
// as much as the tree.
const Edge* FacingEdges::firstIn(Length from, Length to, Interval band) const {
    std::optional<Length> place = m_list.placeFrom(from);
    for (int step = 0; step < walkedSteps; ++step) {
        if (!place || *place > to) {
            return nullptr;
        }
        const Edge& edge = m_list.edgeAt(*place, band);
        if (edge.across.intersects(band)) {
            return &edge;
        }
        place = m_list.placeFrom(*place + Length::fromTicks(1));
    }
    return nearestInTree(from, {from, to}, band);
}

const Edge* FacingEdges::lastIn(Length from, Length to, Interval band) const {
    std::optional<Length> place = m_list.placeBefore(to + Length::fromTicks(1));
    for (int step = 0; step < walkedSteps; ++step) {
        if (!place || *place < from) {
            return nullptr;
        }
        const Edge& edge = m_list.edgeAt(*place, band);
        if (edge.across.intersects(band)) {
            return &edge;
        }
        place = m_list.placeBefore(*place);
    }
    return nearestInTree(to, {from, to}, band);
}

const Edge* FacingEdges::nearestInTree(Length target, Interval places, Interval band) const {
    std::vector<TreeValue> found;
    m_tree->values.query(
        bgi::intersects(treeBox(places, band)) && bgi::nearest(treeBox({target, target}, band), 1),
        std::back_inserter(found));
    // Of several at that place the tree may give any; the list always gives the same.
    return found.empty() ? nullptr : &m_list.edgeAt(m_list.edges()[found.front().second].at, band);
}

}  // namespace matwright::snapping

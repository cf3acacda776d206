// SPDX-License-Identifier: MIT
#include "core/snap/edge_list.h"

#include <algorithm>
#include <cassert>
#include <tuple>

namespace matwright::snapping {

namespace {

std::tuple<Length, Length, Length, std::uint32_t> sortKey(const Edge& edge) {
    return {edge.at, edge.across.low, edge.across.high, edge.neighbour};
}

bool coincide(const Edge& a, const Edge& b) {
    return a.at == b.at && a.across == b.across;
}

Length distance(Interval a, Interval b) {
    return std::max({a.low - b.high, b.low - a.high, Length()});
}

}  // namespace

EdgeList::EdgeList(std::vector<Edge> edges) : m_edges(std::move(edges)) {
    std::ranges::sort(m_edges, {}, sortKey);
    m_edges.erase(std::ranges::unique(m_edges, coincide).begin(), m_edges.end());
    for (const Edge& edge : m_edges) {
        m_longest = std::max(m_longest, edge.across.length());
    }
}

std::optional<Length> EdgeList::placeFrom(Length at) const {
    const auto it = std::ranges::lower_bound(m_edges, at, {}, &Edge::at);
    return it == m_edges.end() ? std::nullopt : std::optional(it->at);
}

std::optional<Length> EdgeList::placeBefore(Length at) const {
    const auto it = std::ranges::lower_bound(m_edges, at, {}, &Edge::at);
    return it == m_edges.begin() ? std::nullopt : std::optional(std::prev(it)->at);
}

const Edge& EdgeList::edgeAt(Length at, Interval across) const {
    const auto group = std::ranges::equal_range(m_edges, at, {}, &Edge::at);
    assert(!group.empty());
    const auto low = [](const Edge& edge) { return edge.across.low; };
    // Whatever meets `across` begins between these two; one more on each side is the next.
    auto first = std::ranges::lower_bound(group, across.low - m_longest, {}, low);
    auto last = std::ranges::upper_bound(group, across.high, {}, low);
    first = first == group.begin() ? first : std::prev(first);
    last = last == group.end() ? last : std::next(last);
    const auto meeting =
        std::find_if(first, last, [&](const Edge& e) { return e.across.intersects(across); });
    if (meeting != last) {
        return *meeting;
    }
    return *std::min_element(first, last, [&](const Edge& a, const Edge& b) {
        return distance(a.across, across) < distance(b.across, across);
    });
}

}  // namespace matwright::snapping

// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "core/measure/rect.h"

namespace matwright::snapping {

// One line of a neighbour: where it stands along an axis and what it spans across it.
struct Edge {
    Length at;
    Interval across;
    std::uint32_t neighbour;  // index into the neighbours; the lower one where edges coincide
    friend bool operator==(const Edge&, const Edge&) = default;
};

// Edges sorted by place, each distinct one once.
class EdgeList {
  public:
    EdgeList() = default;
    explicit EdgeList(std::vector<Edge> edges);

    // The nearest place of an edge at or after, and before, `at`. O(log n).
    std::optional<Length> placeFrom(Length at) const;
    std::optional<Length> placeBefore(Length at) const;
    // Of the edges that stand exactly at `at` (there is one) the one nearest to `across`: one that
    // meets it, else the next before or after it.
    const Edge& edgeAt(Length at, Interval across) const;

    const std::vector<Edge>& edges() const { return m_edges; }

  private:
    std::vector<Edge> m_edges;
    Length m_longest;
};

// An edge list that also finds the next edge meeting a band without walking past all the others:
// where many meet it, by looking at the next few in order; where few do, through an R-tree.
class FacingEdges {
  public:
    explicit FacingEdges(std::vector<Edge> edges);
    ~FacingEdges();
    FacingEdges(FacingEdges&&) noexcept;
    FacingEdges& operator=(FacingEdges&&) noexcept;

    // The lowest edge in [from, to], and the highest, whose span meets `band`; touching counts. All
    // within +-Length::coordinateLimit(). Nothing where from > to.
    const Edge* firstIn(Length from, Length to, Interval band) const;
    const Edge* lastIn(Length from, Length to, Interval band) const;

  private:
    const Edge* nearestInTree(Length target, Interval places, Interval band) const;

    struct Tree;
    EdgeList m_list;
    std::unique_ptr<Tree> m_tree;
};

}  // namespace matwright::snapping

// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>
#include <tuple>

#include "core/carry/relation.h"

namespace matwright::carry {

namespace {

using Indices = std::vector<std::size_t>;

// Finds relations along one axis.
class Finder {
  public:
    Finder(const std::vector<Footprint>& pieces, const PageSetup& setup, Axis axis,
           std::vector<Relation>& found)
        : m_pieces(pieces), m_setup(setup), m_axis(axis), m_found(found) {
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            if (pieces[i].outer.intersects(surface(setup))) {
                m_on.push_back(i);
            }
        }
    }

    void find() {
        findAnchored(RelationKind::OnPageEdge);
        findAnchored(RelationKind::OnMargin);
        findNeighbours();
        findInLine();
        findCentred();
        findCentredTogether();
    }

  private:
    Interval outer(std::size_t i) const { return along(m_pieces[i].outer, m_axis); }
    Interval trim(std::size_t i) const { return along(m_pieces[i].trim, m_axis); }

    Relation relation(RelationKind kind, Indices pieces) const {
        Relation result;
        result.kind = kind;
        result.axis = m_axis;
        result.pieces = std::move(pieces);
        result.onDouble = m_setup.doublePage;
        return result;
    }

    // Adds the relation where it holds.
    bool addIfTrue(const Relation& candidate) {
        if (!holds(candidate, m_pieces, m_setup)) {
            return false;
        }
        m_found.push_back(candidate);
        return true;
    }

    std::size_t pageCount() const { return m_setup.doublePage && m_axis == Axis::X ? 2 : 1; }

    void findAnchored(RelationKind kind) {
        for (const std::size_t i : m_on) {
            for (std::size_t page = 0; page < pageCount(); ++page) {
                for (const End end : {End::Low, End::High}) {
                    Relation candidate = relation(kind, {i});
                    candidate.page = page;
                    candidate.end = end;
                    const bool bare = outer(i) == trim(i);
                    candidate.outer = true;
                    if (isMarginWithoutWidth(candidate)) {
                        continue;
                    }
                    addIfTrue(candidate);
                    candidate.outer = false;
                    if (!bare) {
                        addIfTrue(candidate);
                    }
                }
            }
        }
    }

    bool isMarginWithoutWidth(const Relation& candidate) const {
        Relation edge = candidate;
        edge.kind = RelationKind::OnPageEdge;
        return candidate.kind == RelationKind::OnMargin &&
               anchorOf(candidate, m_setup) == anchorOf(edge, m_setup);
    }

    bool facing(std::size_t i, std::size_t j) const {
        return along(m_pieces[i].outer, across(m_axis))
            .interiorIntersects(along(m_pieces[j].outer, across(m_axis)));
    }

    bool isBetween(std::size_t k, std::size_t i, std::size_t j) const {
        return k != i && k != j && outer(i).high <= outer(k).low && outer(k).high <= outer(j).low &&
               facing(k, i) && facing(k, j);
    }

    void findNeighbours() {
        Indices straight = m_on;
        std::erase_if(straight, [&](std::size_t i) { return m_pieces[i].oblique; });
        std::map<std::size_t, Indices> lower;  // of each piece its neighbours with other gaps
        std::map<std::size_t, Indices> higher;
        for (const std::size_t i : straight) {
            for (const std::size_t j : straight) {
                if (i == j || outer(i).high > outer(j).low || !facing(i, j) ||
                    std::ranges::any_of(straight,
                                        [&](std::size_t k) { return isBetween(k, i, j); })) {
                    continue;
                }
                if (!addIfTrue(relation(RelationKind::Flush, {i, j})) &&
                    !addIfTrue(relation(RelationKind::Gutter, {i, j}))) {
                    lower[j].push_back(i);
                    higher[i].push_back(j);
                }
            }
        }
        for (const auto& [middle, lows] : lower) {
            for (const std::size_t low : lows) {
                for (const std::size_t high : higher[middle]) {
                    addIfTrue(relation(RelationKind::EqualGaps, {low, middle, high}));
                }
            }
        }
    }

    void findInLine() {
        for (const End end : {End::Low, End::High}) {
            const auto lines = [&](bool outermost) {
                std::map<Length, Indices> result;
                for (const std::size_t i : m_on) {
                    const Interval box = outermost ? outer(i) : trim(i);
                    if (!m_pieces[i].oblique) {
                        result[end == End::Low ? box.low : box.high].push_back(i);
                    }
                }
                return result;
            };
            const auto outers = lines(true);
            const auto add = [&](const Indices& members, bool outermost) {
                if (members.size() > 1) {
                    Relation found = relation(RelationKind::InLine, members);
                    found.end = end;
                    found.outer = outermost;
                    m_found.push_back(found);
                }
            };
            for (const auto& [at, members] : outers) {
                add(members, true);
            }
            for (const auto& [at, members] : lines(false)) {
                const bool told = std::ranges::any_of(
                    outers, [&](const auto& line) { return line.second == members; });
                if (!told) {
                    add(members, false);
                }
            }
        }
    }

    void findCentred() {
        for (const std::size_t i : m_on) {
            for (std::size_t page = 0; page < pageCount(); ++page) {
                Relation candidate = relation(RelationKind::CentredOnPage, {i});
                candidate.page = page;
                if (!addIfTrue(candidate)) {
                    candidate.kind = RelationKind::CentredInMargins;
                    addIfTrue(candidate);
                }
            }
            if (pageCount() == 2) {
                addIfTrue(relation(RelationKind::CentredOnFold, {i}));
            }
        }
    }

    bool isCentredSomewhere(std::size_t i) const {
        return std::ranges::any_of(m_found, [&](const Relation& r) {
            return r.axis == m_axis && r.pieces.front() == i && r.pieces.size() == 1 &&
                   r.kind != RelationKind::OnPageEdge && r.kind != RelationKind::OnMargin;
        });
    }

    void findCentredTogether() {
        Indices sorted = m_on;
        const auto middle = [&](std::size_t i) { return trim(i).low + trim(i).high; };
        std::ranges::sort(sorted, {}, [&](std::size_t i) { return std::pair(middle(i), i); });
        for (auto from = sorted.begin(); from != sorted.end();) {
            const auto to = std::find_if(from, sorted.end(), [&](std::size_t i) {
                return (middle(i) - middle(*from)).ticks() > 2;
            });
            Indices members(from, to);
            std::ranges::sort(members);
            const bool told = std::ranges::all_of(
                                  members, [&](std::size_t i) { return isCentredSomewhere(i); }) ||
                              std::ranges::all_of(members, [&](std::size_t i) {
                                  return trim(i) == trim(members.front()) && !m_pieces[i].oblique;
                              });
            if (members.size() > 1 && !told) {
                m_found.push_back(relation(RelationKind::CentredTogether, members));
            }
            from = to;
        }
    }

    const std::vector<Footprint>& m_pieces;
    const PageSetup& m_setup;
    Axis m_axis;
    std::vector<Relation>& m_found;
    Indices m_on;
};

}  // namespace

std::vector<Relation> relationsOf(const std::vector<Footprint>& pieces, const PageSetup& setup) {
    std::vector<Relation> found;
    for (const Axis axis : bothAxes) {
        Finder(pieces, setup, axis, found).find();
    }
    return found;
}

}  // namespace matwright::carry

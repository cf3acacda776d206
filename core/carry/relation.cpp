// SPDX-License-Identifier: MIT
#include "core/carry/relation.h"

#include <algorithm>

namespace matwright::carry {

namespace {

Interval boxAlong(const Relation& relation, const Footprint& piece) {
    return along(relation.outer ? piece.outer : piece.trim, relation.axis);
}

Length edgeOf(const Relation& relation, const Footprint& piece) {
    const Interval box = boxAlong(relation, piece);
    return relation.end == End::Low ? box.low : box.high;
}

Length doubledMiddle(Interval interval) {
    return interval.low + interval.high;
}

Length gap(const Footprint& low, const Footprint& high, Axis axis) {
    return along(high.outer, axis).low - along(low.outer, axis).high;
}

// Which page of the setup stands for the relation's, seen from its end.
std::optional<std::size_t> pageIn(const PageSetup& setup, const Relation& relation) {
    if (setup.doublePage || !relation.onDouble || relation.axis == Axis::Y) {
        return relation.axis == Axis::Y ? 0 : relation.page;
    }
    // Two pages squeezed onto one: only the outer edges are still there.
    const bool outermost = (relation.end == End::Low) == (relation.page == 0);
    return outermost ? std::optional<std::size_t>(0) : std::nullopt;
}

}  // namespace

std::optional<Length> anchorOf(const Relation& relation, const PageSetup& setup) {
    const bool low = relation.end == End::Low;
    const bool squeezed = relation.onDouble && !setup.doublePage && relation.axis == Axis::X;
    const auto page = pageIn(setup, relation);
    switch (relation.kind) {
        case RelationKind::OnPageEdge:
        case RelationKind::OnMargin: {
            if (!page) {
                return std::nullopt;
            }
            const auto areas =
                relation.kind == RelationKind::OnMargin ? insideMargins(setup) : pages(setup);
            const Interval area = along(areas[*page], relation.axis);
            return low ? area.low : area.high;
        }
        case RelationKind::CentredOnPage:
            return squeezed ? std::nullopt
                            : std::optional(doubledMiddle(
                                  along(pages(setup)[page.value_or(0)], relation.axis)));
        case RelationKind::CentredInMargins:
            return squeezed ? std::nullopt
                            : std::optional(doubledMiddle(
                                  along(insideMargins(setup)[page.value_or(0)], relation.axis)));
        case RelationKind::CentredOnFold:
            return doubledMiddle(along(surface(setup), relation.axis));
        default:
            return std::nullopt;
    }
}

bool holds(const Relation& relation, const std::vector<Footprint>& pieces, const PageSetup& setup) {
    const auto at = [&](std::size_t i) -> const Footprint& { return pieces[relation.pieces[i]]; };
    const Axis axis = relation.axis;
    const auto isWithin = [](Length difference, std::int64_t ticks) {
        return abs(difference).ticks() <= ticks;
    };
    switch (relation.kind) {
        case RelationKind::OnPageEdge:
        case RelationKind::OnMargin: {
            const auto anchor = anchorOf(relation, setup);
            return anchor && edgeOf(relation, at(0)) == *anchor;
        }
        case RelationKind::CentredOnPage:
        case RelationKind::CentredInMargins:
        case RelationKind::CentredOnFold: {
            const auto anchor = anchorOf(relation, setup);
            return anchor && isWithin(doubledMiddle(along(at(0).trim, axis)) - *anchor, 2);
        }
        case RelationKind::Gutter:
            return gap(at(0), at(1), axis) == setup.gutter;
        case RelationKind::Flush:
            return gap(at(0), at(1), axis).isZero();
        case RelationKind::EqualGaps:
            return isWithin(gap(at(0), at(1), axis) - gap(at(1), at(2), axis), 2);
        case RelationKind::InLine:
            return std::ranges::all_of(relation.pieces, [&](std::size_t i) {
                return edgeOf(relation, pieces[i]) == edgeOf(relation, at(0));
            });
        case RelationKind::CentredTogether:
            return std::ranges::all_of(relation.pieces, [&](std::size_t i) {
                return isWithin(doubledMiddle(along(pieces[i].trim, axis)) -
                                    doubledMiddle(along(at(0).trim, axis)),
                                2);
            });
    }
    return false;
}

}  // namespace matwright::carry

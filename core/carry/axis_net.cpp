// SPDX-License-Identifier: MIT
#include "core/carry/axis_net.h"

#include <algorithm>

#include "core/measure/ticks.h"

namespace matwright::carry {

namespace {

// In this order relations are taken; later ones give way.
constexpr RelationKind joining[] = {RelationKind::OnPageEdge, RelationKind::OnMargin,
                                    RelationKind::Flush, RelationKind::Gutter,
                                    RelationKind::InLine};
constexpr RelationKind equating[] = {RelationKind::CentredOnPage, RelationKind::CentredInMargins,
                                     RelationKind::CentredOnFold, RelationKind::CentredTogether,
                                     RelationKind::EqualGaps};

// Small gaps are part of the design, large ones are room.
constexpr Length smallGap = Length::inches(0, 3, 4);
constexpr double smallGapWeight = 4;
constexpr double openGapWeight = 0.8;
constexpr Length leastInset = Length::inches(0, 1, 8);

bool keepsToMargins(PieceKind kind) {
    return kind == PieceKind::PhotoSlot || kind == PieceKind::Title ||
           kind == PieceKind::Journaling;
}

}  // namespace

AxisNet::AxisNet(const AxisTask& task)
    : m_task(task), m_sets(1 + 2 * task.before.size()), m_pageHooks(pageHooks()) {}

Interval AxisNet::outer(std::size_t piece) const {
    return along(m_task.before[piece].outer, m_task.axis);
}

bool AxisNet::facing(std::size_t a, std::size_t b) const {
    const Axis other = across(m_task.axis);
    return along(m_task.before[a].outer, other)
        .interiorIntersects(along(m_task.before[b].outer, other));
}

bool AxisNet::makeRigid(std::size_t piece) {
    return m_sets.require(lineOf(piece, End::Low), lineOf(piece, End::High),
                          m_task.wishes[piece].length);
}

void AxisNet::joinRelated() {
    const auto makeAllRigid = [&](Wish::Firmness firmness) {
        for (std::size_t i = 0; i < m_task.wishes.size(); ++i) {
            if (m_task.wishes[i].firmness == firmness) {
                makeRigid(i);
            }
        }
    };
    makeAllRigid(Wish::Firmness::Fixed);
    for (const RelationKind kind : joining) {
        for (const Relation& relation : m_task.relations) {
            if (relation.kind == kind && relation.axis == m_task.axis) {
                require(relation);
            }
        }
    }
    makeAllRigid(Wish::Firmness::Firm);
}

void AxisNet::require(const Relation& relation) {
    const auto& wishes = m_task.wishes;
    const auto border = [&](std::size_t piece, End end) {
        return end == End::Low ? -wishes[piece].lowBorder : wishes[piece].highBorder;
    };
    const std::size_t first = relation.pieces.front();
    if (relation.kind == RelationKind::Gutter || relation.kind == RelationKind::Flush) {
        const std::size_t second = relation.pieces.back();
        const Length gap = relation.kind == RelationKind::Gutter ? m_task.to.gutter : Length();
        m_sets.require(lineOf(first, End::High), lineOf(second, End::Low),
                       border(first, End::High) + gap - border(second, End::Low));
        return;
    }
    const auto offset = [&](std::size_t piece) {
        return relation.outer ? border(piece, relation.end) : Length();
    };
    if (relation.kind == RelationKind::InLine) {
        for (const std::size_t piece : relation.pieces) {
            m_sets.require(lineOf(first, relation.end), lineOf(piece, relation.end),
                           offset(first) - offset(piece));
        }
    } else if (const auto anchor = anchorOf(relation, m_task.to)) {
        m_sets.require(0, lineOf(first, relation.end), *anchor - offset(first));
    }
}

double AxisNet::placeOf(std::size_t line, const std::vector<double>& places) const {
    return places[m_sets.setOf(line)] + ticksOf(m_sets.offsetOf(line));
}

Length AxisNet::sourceOf(std::size_t line) const {
    if (line == 0) {
        return {};
    }
    const Interval trim = along(m_task.before[(line - 1) / 2].trim, m_task.axis);
    return (line - 1) % 2 == 0 ? trim.low : trim.high;
}

Stretch AxisNet::stretch(std::size_t a, std::size_t b, Length shift) const {
    return {m_sets.setOf(a), m_sets.setOf(b),
            ticksOf(m_sets.offsetOf(b) - m_sets.offsetOf(a) + shift)};
}

Springs AxisNet::springs(double photoWeight, bool equalPhotos) const {
    const double scale = ratio(along(surface(m_task.to).size(), m_task.axis),
                               along(surface(m_task.from).size(), m_task.axis));
    std::vector<double> start(lineCount());
    for (std::size_t line = lineCount(); line-- > 1;) {
        if (const std::size_t set = setOf(line); set != 0) {
            start[set] = ticksOf(sourceOf(line)) * scale - ticksOf(offsetOf(line));
        }
    }
    Springs springs(std::move(start), m_task.shares);
    if (equalPhotos) {
        addEqualPhotos(springs);
    }
    addEquations(springs);
    addSizes(springs, photoWeight);
    addGaps(springs);
    addPageBounds(springs);
    addCorners(springs);
    return springs;
}

// Of photos with the same wish, each as long as the one before it.
void AxisNet::addEqualPhotos(Springs& springs) const {
    for (std::size_t i = 0; i < m_task.wishes.size(); ++i) {
        const Wish& wish = m_task.wishes[i];
        for (std::size_t j = i; wish.firmness == Wish::Firmness::Photo && j-- > 0;) {
            if (m_task.wishes[j].firmness != wish.firmness ||
                m_task.wishes[j].length != wish.length ||
                m_task.wishes[j].longest != wish.longest) {
                continue;
            }
            Springs::Terms terms;
            double value = 0;
            const auto put = [&](std::size_t line, double sign) {
                terms.emplace_back(setOf(line), sign);
                value -= sign * ticksOf(offsetOf(line));
            };
            put(lineOf(i, End::High), 1);
            put(lineOf(i, End::Low), -1);
            put(lineOf(j, End::High), -1);
            put(lineOf(j, End::Low), 1);
            springs.require(terms, value);
            break;
        }
    }
}

bool AxisNet::requireEquation(Springs& springs, const Relation& relation) const {
    Springs::Terms terms;
    double value = 0;
    const auto put = [&](std::size_t piece, End end, double sign) {
        const std::size_t line = lineOf(piece, end);
        terms.emplace_back(setOf(line), sign);
        value -= sign * ticksOf(offsetOf(line));
    };
    const auto& p = relation.pieces;
    if (relation.kind == RelationKind::EqualGaps) {
        const auto& w = m_task.wishes;
        put(p[1], End::Low, 1);
        put(p[0], End::High, -1);
        put(p[2], End::Low, -1);
        put(p[1], End::High, 1);
        value += ticksOf(w[p[1]].lowBorder + w[p[0]].highBorder - w[p[2]].lowBorder -
                         w[p[1]].highBorder);
        return springs.require(terms, value);
    }
    if (relation.kind == RelationKind::CentredTogether) {
        bool all = true;
        for (std::size_t k = 1; k < p.size(); ++k) {
            terms.clear();
            value = 0;
            for (const End end : {End::Low, End::High}) {
                put(p[k], end, 1);
                put(p[0], end, -1);
            }
            all = springs.require(terms, value) && all;
        }
        return all;
    }
    const auto anchor = anchorOf(relation, m_task.to);
    put(p[0], End::Low, 1);
    put(p[0], End::High, 1);
    return anchor && springs.require(terms, value + ticksOf(*anchor));
}

void AxisNet::preferEqualPhotos() {
    m_equations.clear();
    Springs springs(std::vector<double>(lineCount()), m_task.shares);
    addEqualPhotos(springs);
    for (const RelationKind kind : equating) {
        for (const Relation& relation : m_task.relations) {
            if (relation.kind == kind && relation.axis == m_task.axis &&
                requireEquation(springs, relation)) {
                m_equations.push_back(&relation);
            }
        }
    }
}

void AxisNet::addEquations(Springs& springs) const {
    for (const Relation* relation : m_equations) {
        requireEquation(springs, *relation);
    }
}

void AxisNet::addSizes(Springs& springs, double photoWeight) const {
    for (std::size_t i = 0; i < m_task.wishes.size(); ++i) {
        const Wish& wish = m_task.wishes[i];
        const Stretch size = stretch(lineOf(i, End::Low), lineOf(i, End::High), {});
        const bool photo = wish.firmness == Wish::Firmness::Photo;
        springs.add(Spring{size, ticksOf(wish.length), photo ? photoWeight : wish.weight});
        springs.add(Bound{size, ticksOf(wish.least)});
        if (wish.longest) {
            springs.add(Bound{{size.b, size.a, -size.shift}, -ticksOf(*wish.longest)});
        }
    }
}

AxisNet::Hook AxisNet::hookOf(std::size_t piece, End end) const {
    const Wish& wish = m_task.wishes[piece];
    const bool low = end == End::Low;
    return {low ? outer(piece).low : outer(piece).high,
            lineOf(piece, end),
            low ? -wish.lowBorder : wish.highBorder,
            piece,
            false,
            end};
}

// Page edges and margins that both setups have.
std::vector<AxisNet::Hook> AxisNet::pageHooks() const {
    std::vector<Hook> hooks;
    const std::size_t count = m_task.axis == Axis::X ? pages(m_task.from).size() : 1;
    for (std::size_t page = 0; page < count; ++page) {
        for (const RelationKind kind : {RelationKind::OnPageEdge, RelationKind::OnMargin}) {
            for (const End end : {End::Low, End::High}) {
                Relation line;
                line.kind = kind;
                line.axis = m_task.axis;
                line.page = page;
                line.end = end;
                line.onDouble = m_task.from.doublePage;
                if (const auto anchor = anchorOf(line, m_task.to)) {
                    hooks.push_back({*anchorOf(line, m_task.from), 0, *anchor, 0, true, end});
                }
            }
        }
    }
    return hooks;
}

// From each outermost edge to the nearest line on its outer side, and on to the nearest edge inside
// the piece: of pieces that it faces, or of the page.
void AxisNet::addGaps(Springs& springs) const {
    for (std::size_t i = 0; i < m_task.before.size(); ++i) {
        std::vector<Hook> hooks = m_pageHooks;
        for (std::size_t j = 0; j < m_task.before.size(); ++j) {
            if (j != i && facing(i, j)) {
                hooks.push_back(hookOf(j, End::Low));
                hooks.push_back(hookOf(j, End::High));
            }
        }
        const Hook low = hookOf(i, End::Low);
        const Hook high = hookOf(i, End::High);
        const Hook* below = nullptr;
        const Hook* above = nullptr;
        for (const Hook& hook : hooks) {
            if (hook.source < low.source && (!below || hook.source > below->source)) {
                below = &hook;
            }
            if (hook.source > high.source && (!above || hook.source < above->source)) {
                above = &hook;
            }
        }
        if (below) {
            addGap(springs, *below, low);
        }
        if (above) {
            addGap(springs, high, *above);
        }
    }
}

void AxisNet::addGap(Springs& springs, const Hook& low, const Hook& high) const {
    const Length distance = high.source - low.source;
    const Stretch gap = stretch(low.line, high.line, high.shift - low.shift);
    springs.add(
        Spring{gap, ticksOf(distance), distance <= smallGap ? smallGapWeight : openGapWeight});
    const bool apart = !low.ofPage && !high.ofPage && low.end == End::High && high.end == End::Low;
    const Length least = low.ofPage || high.ofPage ? Length()
                         : apart                   ? std::min(distance, m_task.to.gutter)
                                                   : std::min(distance, leastInset);
    springs.add(Bound{gap, ticksOf(least)});
}

// What lay inside the page, and a photo or text inside the margins, stays so.
void AxisNet::addPageBounds(Springs& springs) const {
    for (std::size_t i = 0; i < m_task.before.size(); ++i) {
        const Hook low = hookOf(i, End::Low);
        const Hook high = hookOf(i, End::High);
        const Interval inside = along(surface(m_task.to), m_task.axis);
        const Interval was = along(surface(m_task.from), m_task.axis);
        if (low.source >= was.low) {
            springs.add(Bound{stretch(0, low.line, low.shift), ticksOf(inside.low)});
        }
        if (high.source <= was.high) {
            springs.add(Bound{stretch(high.line, 0, -high.shift), -ticksOf(inside.high)});
        }
        if (!keepsToMargins(m_task.before[i].piece->kind)) {
            continue;
        }
        for (const Hook& hook : m_pageHooks) {
            // The inner sides of its own page: outer(i) lies wholly on one side of the line.
            if (hook.end == End::Low && low.source >= hook.source) {
                springs.add(Bound{stretch(0, low.line, low.shift - hook.shift), 0});
            }
            if (hook.end == End::High && high.source <= hook.source) {
                springs.add(Bound{stretch(high.line, 0, hook.shift - high.shift), 0});
            }
        }
    }
}

// Pieces that lie cornerwise stay apart along the axis where they are further apart.
void AxisNet::addCorners(Springs& springs) const {
    const auto gapAlong = [&](std::size_t a, std::size_t b, Axis axis) {
        const Interval first = along(m_task.before[a].outer, axis);
        const Interval second = along(m_task.before[b].outer, axis);
        return std::max(second.low - first.high, first.low - second.high);
    };
    for (std::size_t a = 0; a < m_task.before.size(); ++a) {
        for (std::size_t b = 0; b < m_task.before.size(); ++b) {
            const Length mine = outer(b).low - outer(a).high;
            if (a == b || mine.isNegative() || facing(a, b)) {
                continue;
            }
            const Length other = gapAlong(a, b, across(m_task.axis));
            if (mine > other || (mine == other && m_task.axis == Axis::X)) {
                const Hook low = hookOf(a, End::High);
                const Hook high = hookOf(b, End::Low);
                springs.add(Bound{stretch(low.line, high.line, high.shift - low.shift),
                                  ticksOf(std::min(mine, m_task.to.gutter))});
            }
        }
    }
}

}  // namespace matwright::carry

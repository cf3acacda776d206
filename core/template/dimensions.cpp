// SPDX-License-Identifier: MIT
#include "core/template/dimensions.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "core/template/dimension_line.h"
#include "core/template/pen.h"

namespace matwright {

namespace {

// The longest gap over which two edges are tied together; further apart the eye loses the line.
constexpr Length longestTie = Length::inches(3);
constexpr Length tieClearance = Length::hundredthMillimetres(100);

// Pieces of one page with the same distance: they may share a line.
struct Alignment {
    Distance distance;
    Length value;
    std::vector<const ScenePiece*> members;
};

std::vector<Alignment> alignmentsOf(const Scene& scene, const std::set<DistanceOf>& wanted) {
    std::map<std::tuple<Distance, Length, Length>, Alignment> found;
    for (const ScenePiece& piece : scene.pieces()) {
        for (const Distance distance : {Distance::Left, Distance::Top}) {
            if (wanted.contains({piece.id, distance})) {
                const Length value = distance == Distance::Left ? piece.left() : piece.top();
                Alignment& it = found[{distance, piece.page.left(), value}];
                it.distance = distance;
                it.value = value;
                it.members.push_back(&piece);
            }
        }
    }
    std::vector<Alignment> out;
    out.reserve(found.size());
    for (auto& [key, alignment] : found) {
        out.push_back(std::move(alignment));
    }
    return out;
}

// The uppermost piece gives way to the fewest lines from above, the rightmost one to the fewest
// from the left.
void sortMembers(Alignment& alignment) {
    const bool left = alignment.distance == Distance::Left;
    std::ranges::stable_sort(alignment.members, {}, [left](const ScenePiece* piece) {
        return left ? piece->trimBounds.top() : -piece->trimBounds.right();
    });
}

class Planner {
  public:
    Planner(const Scene& scene, Occupancy occupancy, Scale scale)
        : m_scene(scene), m_occupancy(std::move(occupancy)), m_scale(scale) {}

    void place(const Alignment& alignment) {
        for (const ScenePiece* piece : alignment.members) {
            if (m_plan.shown.contains({piece->id, alignment.distance})) {
                continue;
            }
            const auto line =
                findDimensionLine(m_scene, m_occupancy, *piece, alignment.distance, m_scale);
            if (line) {
                m_plan.shown.insert({piece->id, alignment.distance});
                std::ranges::move(itemsOf(*line), std::back_inserter(m_plan.items));
                m_occupancy.addBox(line->lineBox(), Occupancy::Mark);
                m_occupancy.addBox(line->figureBox, Occupancy::Mark);
                tieFrom(*piece, alignment, -1);
                tieFrom(*piece, alignment, 1);
            }
        }
    }

    DimensionPlan take() { return std::move(m_plan); }

  private:
    // Goes from member to member in one direction as far as free, short ties reach.
    void tieFrom(const ScenePiece& start, const Alignment& alignment, int direction) {
        const Distance distance = alignment.distance;
        EdgeContact here = contactOf(start, distance);
        for (const ScenePiece* next = nearest(here, alignment, direction); next != nullptr;
             next = nearest(here, alignment, direction)) {
            const EdgeContact there = contactOf(*next, distance);
            if (!tie(here, there, distance, direction)) {
                return;
            }
            m_plan.shown.insert({next->id, distance});
            here.along = there.along;
        }
    }

    const ScenePiece* nearest(const EdgeContact& here, const Alignment& alignment,
                              int direction) const {
        const ScenePiece* best = nullptr;
        Length bestGap = longestTie;
        for (const ScenePiece* piece : alignment.members) {
            const EdgeContact there = contactOf(*piece, alignment.distance);
            const Length gap = direction > 0 ? there.along.low - here.along.high
                                             : here.along.low - there.along.high;
            if (!gap.isNegative() && gap <= bestGap &&
                !m_plan.shown.contains({piece->id, alignment.distance})) {
                best = piece;
                bestGap = gap;
            }
        }
        return best;
    }

    bool tie(const EdgeContact& here, const EdgeContact& there, Distance distance, int direction) {
        const Length from = direction > 0 ? here.along.high : there.along.high;
        const Length to = direction > 0 ? there.along.low : here.along.low;
        const Vertex start = vertexOf(distance, here.edge, from + tieClearance);
        const Vertex end = vertexOf(distance, here.edge, to - tieClearance);
        if (to - from <= 2 * tieClearance) {
            return true;  // the edges run on from one piece to the next
        }
        if (!m_occupancy.isFree(start, end, Occupancy::Mark)) {
            return false;
        }
        m_plan.items.emplace_back(PathItem{{linePath(start, end)}, pen::dimension(), std::nullopt});
        m_occupancy.addLine(start, end, Occupancy::Mark);
        return true;
    }

    const Scene& m_scene;
    Occupancy m_occupancy;
    Scale m_scale;
    DimensionPlan m_plan;
};

using Order = bool (*)(const Alignment&, const Alignment&);

bool leftFirst(const Alignment& a, const Alignment& b) {
    return std::tie(a.distance, a.value) < std::tie(b.distance, b.value);
}
bool topFirst(const Alignment& a, const Alignment& b) {
    return std::tie(b.distance, a.value) < std::tie(a.distance, b.value);
}
bool shortFirst(const Alignment& a, const Alignment& b) {
    return a.value < b.value;
}
bool longFirst(const Alignment& a, const Alignment& b) {
    return a.value > b.value;
}

}  // namespace

DimensionPlan planDimensions(const Scene& scene, const Occupancy& occupancy, Scale scale,
                             const std::set<DistanceOf>& wanted) {
    std::vector<Alignment> alignments = alignmentsOf(scene, wanted);
    std::ranges::for_each(alignments, sortMembers);
    DimensionPlan best;
    for (const Order order : {leftFirst, topFirst, shortFirst, longFirst}) {
        std::ranges::stable_sort(alignments, order);
        Planner planner(scene, occupancy, scale);
        for (const Alignment& alignment : alignments) {
            planner.place(alignment);
        }
        DimensionPlan plan = planner.take();
        if (plan.shown.size() > best.shown.size()) {
            best = std::move(plan);
        }
        if (best.shown.size() == wanted.size()) {
            break;
        }
    }
    return best;
}

}  // namespace matwright

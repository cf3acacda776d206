// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/measure/length_text.h"
#include "core/sketch/sketch.h"

namespace matwright {

// Which rules are on and how strong they are; an argument of every call, never looked up.
// - pageEdges, margins: the box's outermost edge on the page's or margin's edge of the same side.
//   Of a double page every page counts, so the edges at the fold do too.
// - pageCentres, thirds: the box's trim centre or a trim edge on a page's centre line or third.
// - grid: a trim edge on a grid that starts at each page's top left corner.
// - neighbourEdges, neighbourCentres: trim edge to trim edge, trim centre to trim centre.
// - matEdges: outermost edge to outermost edge where the box or the neighbour has mats.
// - gutter: the page's gutter between outermost edges that face each other.
// - equalGaps: (moves only) the box in the middle between two neighbours, to the tick below, or
//   going on with the gap that the two nearest pieces of its row have.
// Pieces face each other when they overlap on the other axis or come within reach of that.
struct SnapSettings {
    bool pageEdges = true;
    bool margins = true;
    bool pageCentres = true;
    bool thirds = false;
    bool grid = false;
    bool neighbourEdges = true;
    bool neighbourCentres = true;
    bool gutter = true;
    bool equalGaps = true;
    bool matEdges = true;
    Length gridStep = Length::inches(0, 1, 4);
    Length reach = Length::inches(0, 1, 8);  // how far a snap may move the box
    Scale scale = Scale::SixteenthInch;      // for the words
    friend bool operator==(const SnapSettings&, const SnapSettings&) = default;
};

enum class Axis { Horizontal, Vertical };  // Horizontal: x is snapped, the guide line is upright

// What is moved: the upright bounds of its trim and of its outermost edge (equal without mats).
struct SnapBox {
    Rect trim;
    Rect outermost;
};

// Which edges may move: all of them (a move), or some (a resize drags one or two edges).
struct SnapEdges {
    bool left = true, right = true, top = true, bottom = true;
    friend constexpr bool operator==(const SnapEdges&, const SnapEdges&) = default;
};

// A line to show while the snap holds: from..to along the other axis, and a measured gap where
// there is one.
struct SnapGuide {
    Axis axis;  // Horizontal: the line stands at x = at and runs from y = from to y = to
    Length at;
    Length from;
    Length to;
    friend constexpr bool operator==(const SnapGuide&, const SnapGuide&) = default;
};
struct SnapGap {
    Axis axis;  // Horizontal: a gap measured along x, from..to, shown at y = at
    Length at;
    Length from;
    Length to;  // from <= to; equal where two touch
    friend constexpr bool operator==(const SnapGap&, const SnapGap&) = default;
};

// One way a rule offers to move the box along one axis.
struct SnapCandidate {
    Axis axis;
    Length by;        // |by| <= reach
    std::string why;  // in words the canvas shows: "1/4 in gutter", "left margin", "page centre"
    int rank;         // between equal distances the lower rank wins; each rule has its own
    // As they are with the box moved by `by`; a guide spans the box and what it is in line with.
    std::vector<SnapGuide> guides;
    std::vector<SnapGap> gaps;
    friend bool operator==(const SnapCandidate&, const SnapCandidate&) = default;
};

// The still surroundings of a gesture, built once when it starts: the page and every piece that
// does not move, indexed so that a query looks only at what is near. A value of its own: the sketch
// may change or go. Building sorts (n log n); a query takes time like log n where pieces are spread
// out.
class SnapContext {
  public:
    // `moving` are left out; ids that do not exist are passed over.
    SnapContext(const Sketch& sketch, std::span<const PieceId> moving);
    ~SnapContext();
    SnapContext(SnapContext&&) noexcept;
    SnapContext& operator=(SnapContext&&) noexcept;

    struct Index;  // for the rules, see core/snap/index.h
    const Index& index() const { return *m_index; }

  private:
    std::unique_ptr<Index> m_index;
};

// One rule. Pure: the same arguments give the same candidates. It offers the nearest way for each
// edge or centre that may snap, not every way within reach, and nothing along an axis on which no
// edge may move.
class SnapRule {
  public:
    virtual ~SnapRule() = default;
    virtual void addCandidates(const SnapContext& context, const SnapBox& box,
                               const SnapEdges& edges, const SnapSettings& settings,
                               std::vector<SnapCandidate>& out) const = 0;
};

// The rules the settings switch on, in the order of their ranks.
std::vector<std::unique_ptr<SnapRule>> snapRules(const SnapSettings& settings);

// At most one snap an axis: the nearest, then the lowest rank, then towards the left or top. `why`
// is the picked one's; guides and gaps are those of every rule that holds where the box lands, one
// guide a line.
struct SnapResult {
    std::optional<SnapCandidate> horizontal;
    std::optional<SnapCandidate> vertical;
    Point by() const {
        return {horizontal ? horizontal->by : Length(), vertical ? vertical->by : Length()};
    }
};
// A resize that would bring a dragged edge on or past the opposite one does not snap.
SnapResult snap(const SnapContext& context, const SnapBox& box, const SnapEdges& edges,
                const SnapSettings& settings);

// The gaps from a box to its nearest neighbours (outermost bounds) that overlap it on the other
// axis, or to the page's edge where that is nearer: left, right, top, bottom. A side on which there
// is neither, because the box hangs over the page's edge, has no gap. The live measures of a drag.
std::vector<SnapGap> gapsAround(const SnapContext& context, const Rect& box);

}  // namespace matwright

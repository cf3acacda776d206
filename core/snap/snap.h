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
    bool isMove() const { return left && right && top && bottom; }
};

// A line to show while the snap holds: from..to along the other axis, and a measured gap where
// there is one.
struct SnapGuide {
    Axis axis;  // Horizontal: the line stands at x = at and runs from y = from to y = to
    Length at;
    Length from;
    Length to;
};
struct SnapGap {
    Axis axis;  // Horizontal: a gap measured along x, from..to, shown at y = at
    Length at;
    Length from;
    Length to;
};

// One way a rule offers to move the box along one axis.
struct SnapCandidate {
    Axis axis;
    Length by;        // |by| <= reach
    std::string why;  // in words the canvas shows: "1/4 in gutter", "left margin", "page centre"
    int rank;         // between equal distances the lower rank wins; each rule has its own
    std::vector<SnapGuide> guides;
    std::vector<SnapGap> gaps;
};

// The still surroundings of a gesture, built once when it starts: the page and every piece that
// does not move, indexed so that a query looks only at what is near.
class SnapContext {
  public:
    SnapContext(const Sketch& sketch, std::span<const PieceId> moving);
    ~SnapContext();
    SnapContext(SnapContext&&) noexcept;
    SnapContext& operator=(SnapContext&&) noexcept;

    struct Index;
    const Index& index() const { return *m_index; }
    const PageSetup& page() const;

  private:
    std::unique_ptr<Index> m_index;
};

// One rule. Pure: the same arguments give the same candidates.
class SnapRule {
  public:
    virtual ~SnapRule() = default;
    virtual void addCandidates(const SnapContext& context, const SnapBox& box,
                               const SnapEdges& edges, const SnapSettings& settings,
                               std::vector<SnapCandidate>& out) const = 0;
};

// The rules the settings switch on.
std::vector<std::unique_ptr<SnapRule>> snapRules(const SnapSettings& settings);

// At most one snap an axis: the nearest, then the lowest rank.
struct SnapResult {
    std::optional<SnapCandidate> horizontal;
    std::optional<SnapCandidate> vertical;
    Point by() const {
        return {horizontal ? horizontal->by : Length(), vertical ? vertical->by : Length()};
    }
};
SnapResult snap(const SnapContext& context, const SnapBox& box, const SnapEdges& edges,
                const SnapSettings& settings);

// The gaps from a box to its nearest neighbours, or the page's edge, on all four sides: the live
// measures during a drag.
std::vector<SnapGap> gapsAround(const SnapContext& context, const Rect& box);

}  // namespace matwright

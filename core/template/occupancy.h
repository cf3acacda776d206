// SPDX-License-Identifier: MIT
#pragma once

#include "core/outline/path.h"
#include "core/template/grid_index.h"

namespace matwright {

// What lies on the sheet already: where a text or a dimension line may still go.
class Occupancy {
  public:
    // Outline: trim lines and mat edges. Guide: margins and ticks. Mark: what was placed, a text, a
    // dimension line, a square. Kinds are combined with |.
    enum Kind : unsigned { Outline = 1, Guide = 2, Mark = 4, Everything = 7 };

    // With the parts it is printed in; none for a sheet in one piece.
    explicit Occupancy(Size sheet, std::vector<Rect> parts = {});

    void addBox(const Rect& box, Kind kind);
    void addLine(Vertex from, Vertex to, Kind kind);
    void addRing(const std::vector<Vertex>& ring, Kind kind);

    // Whether the box lies inside the sheet and shares no inner point with a box and no point with
    // a line of these kinds.
    bool isFree(const Rect& box, unsigned kinds) const;
    // Whether, besides, the box lies whole in one part: what is written there can be read on one
    // sheet.
    bool isFreeOnOnePart(const Rect& box, unsigned kinds) const;
    // isFree for a straight line; its ends count.
    bool isFree(Vertex from, Vertex to, unsigned kinds) const;
    // How much of these kinds lies in the box: 0 is nothing, more is worse.
    int crowd(const Rect& box, unsigned kinds) const;

    // Whether an outline or guide runs through the box lengthwise: level (or upright) within the
    // box's breadth, for more than `longest` of its length.
    bool hasLineAlong(const Rect& box, bool level, Length longest) const;

    const Rect& sheet() const { return m_sheet; }

  private:
    struct Thing {
        Kind kind;
        bool isLine;
        Rect box;  // around a line
        Vertex from;
        Vertex to;
    };
    bool meets(const Thing& thing, const Rect& box) const;

    Rect m_sheet;
    std::vector<Rect> m_parts;
    GridIndex m_index;
    std::vector<Thing> m_things;
};

// Whether a straight line has a point in the closed box.
bool lineMeetsBox(Vertex from, Vertex to, const Rect& box);
// Whether two closed straight lines share a point.
bool linesMeet(Vertex a1, Vertex a2, Vertex b1, Vertex b2);

}  // namespace matwright

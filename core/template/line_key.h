// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/sketch/sketch.h"

namespace matwright {

// What a kind of line means: a short stretch of it stands before these words.
struct LineMeaning {
    Stroke stroke;
    std::string words;
};

// One for each kind of line the template has: those in its outline layers, and the guides of the
// page where they are drawn.
std::vector<LineMeaning> lineMeanings(std::span<const Layer> outlines, const PageSetup& page,
                                      bool withGuides);

// The meanings set side by side, as many in a row as the width holds, measured before they are
// placed.
class LineKey {
  public:
    LineKey() = default;
    // Wider than `width` only where the widest meaning is.
    LineKey(std::span<const LineMeaning> meanings, Length height, Length width);

    // Nothing where there are no meanings.
    Size room() const { return m_room; }
    // With its room's top left corner at `at`.
    std::vector<DrawingItem> itemsAt(Point at) const;

  private:
    struct Entry {
        LineMeaning meaning;
        Point at;
    };
    std::vector<Entry> m_entries;
    Length m_height;
    Size m_room;
};

}  // namespace matwright

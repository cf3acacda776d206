// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/template/text_block.h"
#include "core/template/tiling.h"

namespace matwright {

// What a sheet says about itself, in a white box: the tile's name, a small map of the whole, and
// two rulers, 1 in and 50 mm, so that every sheet can be measured on its own.
class TileLabel {
  public:
    TileLabel(const Drawing& drawing, const TilePlan& plan, const Tile& tile);

    Size room() const;
    // With its top left corner at `at`, back to front.
    std::vector<DrawingItem> itemsAt(Point at) const;

  private:
    Length headHeight() const;
    std::vector<DrawingItem> map(Point at) const;

    const Drawing& m_drawing;
    const TilePlan& m_plan;
    const Tile& m_tile;
    TextBlock m_words;
    Size m_wordRoom;
    Size m_map;
};

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <vector>

#include "core/measure/length.h"

namespace matwright::carry {

// Lines along one axis that keep exact distances from each other: disjoint sets with an offset at
// each member. Line 0 is the page's own origin; what hangs on it is fixed.
class LineSets {
  public:
    explicit LineSets(std::size_t lines);

    std::size_t setOf(std::size_t line) const { return m_set[line]; }
    // The line's place is that of its set plus this.
    Length offsetOf(std::size_t line) const { return m_offset[line]; }

    // From now on `b` lies `distance` behind `a`. False, and nothing changes, where what was
    // required before says otherwise.
    bool require(std::size_t a, std::size_t b, Length distance);

  private:
    std::vector<std::size_t> m_set;
    std::vector<Length> m_offset;
};

}  // namespace matwright::carry

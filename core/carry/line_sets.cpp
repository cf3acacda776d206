// SPDX-License-Identifier: MIT
#include "core/carry/line_sets.h"

namespace matwright::carry {

LineSets::LineSets(std::size_t lines) : m_set(lines), m_offset(lines) {
    for (std::size_t line = 0; line < lines; ++line) {
        m_set[line] = line;
    }
}

bool LineSets::require(std::size_t a, std::size_t b, Length distance) {
    const std::size_t setA = m_set[a];
    const std::size_t setB = m_set[b];
    const Length between = m_offset[a] + distance - m_offset[b];  // from A's set to B's
    if (setA == setB) {
        return between.isZero();
    }
    // The lower name stays, so that the page's set is always 0. There are few lines, so all of them
    // are renamed at once.
    const bool keepA = setA < setB;
    const std::size_t gone = keepA ? setB : setA;
    for (std::size_t line = 0; line < m_set.size(); ++line) {
        if (m_set[line] == gone) {
            m_set[line] = keepA ? setA : setB;
            m_offset[line] += keepA ? between : -between;
        }
    }
    return true;
}

}  // namespace matwright::carry

// SPDX-License-Identifier: MIT
#include "core/sheets/search/state_index.h"

#include <utility>

namespace matwright::sheets {

StateIndex::StateIndex(std::uint64_t states) {
    constexpr std::uint64_t few = 1U << 16U;
    if (states <= few) {
        m_plain.assign(states, 0);
        return;
    }
    m_bits = 16;
    m_entries.assign(std::size_t{1} << m_bits, {});
    m_marks.assign((std::size_t{1} << markBits) / 64, 0);
}

void StateIndex::add(std::uint64_t state, std::uint32_t slot) {
    if (m_marks.empty()) {
        m_plain[state] = slot;
        return;
    }
    if (2 * ++m_size > m_entries.size()) {
        grow();
    }
    const std::uint64_t mark = hashOf(state) >> (64 - markBits);
    m_marks[mark / 64] |= std::uint64_t{1} << (mark % 64);
    place(state, slot);
}

void StateIndex::place(std::uint64_t state, std::uint32_t slot) {
    std::size_t at = hashOf(state) >> (64 - m_bits);
    while (m_entries[at].slot != 0) {
        at = (at + 1) & (m_entries.size() - 1);
    }
    m_entries[at] = {state, slot};
}

std::uint32_t StateIndex::search(std::uint64_t state, std::uint64_t hash) const {
    std::size_t at = hash >> (64 - m_bits);
    while (m_entries[at].slot != 0 && m_entries[at].state != state) {
        at = (at + 1) & (m_entries.size() - 1);
    }
    return m_entries[at].slot;
}

void StateIndex::grow() {
    const auto entries = std::exchange(m_entries, {});
    ++m_bits;
    m_entries.assign(std::size_t{1} << m_bits, {});
    for (const Entry& entry : entries) {
        if (entry.slot != 0) {
            place(entry.state, entry.slot);
        }
    }
}

}  // namespace matwright::sheets

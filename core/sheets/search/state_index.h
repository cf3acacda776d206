// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

namespace matwright::sheets {

// Where the things known about a numbered state stand: a plain list where there are few states,
// else a hash table that grows with what is in it, with one bit before it that answers most
// questions with no.
class StateIndex {
  public:
    explicit StateIndex(std::uint64_t states);

    // `slot` above 0; each state once.
    void add(std::uint64_t state, std::uint32_t slot);
    // 0 where the state was not added.
    std::uint32_t find(std::uint64_t state) const {
        if (m_marks.empty()) {
            return m_plain[state];
        }
        const std::uint64_t hash = hashOf(state);
        const std::uint64_t mark = hash >> (64 - markBits);
        return m_marks[mark / 64] >> (mark % 64) & 1 ? search(state, hash) : 0;
    }

  private:
    static constexpr unsigned markBits = 22;

    static std::uint64_t hashOf(std::uint64_t state) {
        // Fibonacci hashing (Knuth, The Art of Computer Programming 3, 6.4).
        return state * 0x9E3779B97F4A7C15U;
    }
    std::uint32_t search(std::uint64_t state, std::uint64_t hash) const;
    void place(std::uint64_t state, std::uint32_t slot);
    void grow();

    struct Entry {
        std::uint64_t state;
        std::uint32_t slot;
    };

    std::vector<std::uint32_t> m_plain;  // slots by state, where these are few
    std::vector<Entry> m_entries;        // else; a power of two
    std::vector<std::uint64_t> m_marks;  // bits
    unsigned m_bits = 0;                 // of the number of entries
    std::size_t m_size = 0;
};

}  // namespace matwright::sheets

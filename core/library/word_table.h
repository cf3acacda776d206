// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/library/bits.h"

namespace matwright {

// The distinct words of all entries and where they occur: a search for words looks through each
// word once, however many entries have it.
class WordTable {
  public:
    struct Has {
        std::string_view word;  // folded, see text_fold.h
        std::uint32_t entry;
    };

    WordTable() = default;
    // Pairs may come in any order and more than once.
    WordTable(std::size_t entries, std::vector<Has> pairs);

    // The entries that have a word with `part` in it; `part` is folded, has no separators in it and
    // is not empty.
    Bits withPart(std::string_view part) const;
    // The entries that have the word itself.
    Bits withWord(std::string_view word) const;
    std::size_t words() const { return m_starts.empty() ? 0 : m_starts.size() - 1; }

  private:
    std::string_view word(std::size_t index) const;
    void addEntries(std::size_t index, Bits& to) const;

    std::size_t m_entries = 0;
    // All words, a line break before each and after the last; word i stands between m_starts[i] and
    // the break before m_starts[i + 1]. First those of digits alone (files are often numbered, so
    // there may be as many as files), each group by bytes.
    std::string m_text;
    std::vector<std::uint32_t> m_starts;
    std::size_t m_lettersStart = 0;  // in m_text: the first word that is no number
    // The entries of word i are m_having[m_havingStarts[i] .. m_havingStarts[i + 1]).
    std::vector<std::uint32_t> m_havingStarts;
    std::vector<std::uint32_t> m_having;
};

}  // namespace matwright

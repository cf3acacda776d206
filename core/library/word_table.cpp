// SPDX-License-Identifier: MIT
#include "core/library/word_table.h"

#include <algorithm>
#include <tuple>

namespace matwright {

WordTable::WordTable(std::size_t entries, std::vector<Has> pairs) : m_entries(entries) {
    std::ranges::sort(pairs, {}, [](const Has& has) { return std::tie(has.word, has.entry); });
    m_having.reserve(pairs.size());
    m_text = '\n';
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        const bool newWord = i == 0 || pairs[i].word != pairs[i - 1].word;
        if (newWord) {
            m_starts.push_back(static_cast<std::uint32_t>(m_text.size()));
            m_havingStarts.push_back(static_cast<std::uint32_t>(m_having.size()));
            m_text += pairs[i].word;
            m_text += '\n';
        }
        if (newWord || pairs[i].entry != pairs[i - 1].entry) {
            m_having.push_back(pairs[i].entry);
        }
    }
    m_starts.push_back(static_cast<std::uint32_t>(m_text.size()));
    m_havingStarts.push_back(static_cast<std::uint32_t>(m_having.size()));
    m_having.shrink_to_fit();
}

std::string_view WordTable::word(std::size_t index) const {
    return std::string_view(m_text).substr(m_starts[index],
                                           m_starts[index + 1] - m_starts[index] - 1);
}

void WordTable::addEntries(std::size_t index, Bits& to) const {
    for (std::uint32_t i = m_havingStarts[index]; i < m_havingStarts[index + 1]; ++i) {
        to.set(m_having[i]);
    }
}

Bits WordTable::withPart(std::string_view part) const {
    Bits found(m_entries);
    const std::string_view text = m_text;
    for (std::size_t at = text.find(part); at != std::string_view::npos;) {
        const auto next = std::ranges::upper_bound(m_starts, at);
        addEntries(static_cast<std::size_t>(next - m_starts.begin()) - 1, found);
        at = text.find(part, *next);
    }
    return found;
}

Bits WordTable::withWord(std::string_view sought) const {
    Bits found(m_entries);
    std::size_t low = 0;
    for (std::size_t high = words(); low < high;) {
        const std::size_t middle = (low + high) / 2;
        if (word(middle) < sought) {
            low = middle + 1;
        } else {
            high = middle;
        }
    }
    if (low < words() && word(low) == sought) {
        addEntries(low, found);
    }
    return found;
}

}  // namespace matwright

// SPDX-License-Identifier: MIT
#include "core/library/word_table.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace matwright {

namespace {

bool hasOnlyDigits(std::string_view word) {
    return std::ranges::all_of(word, [](char c) { return c >= '0' && c <= '9'; });
}

std::pair<bool, std::string_view> placeOf(std::string_view word) {
    return {!hasOnlyDigits(word), word};
}

}  // namespace

WordTable::WordTable(std::size_t entries, std::vector<Has> pairs) : m_entries(entries) {
    const auto numbersEnd = std::ranges::partition(pairs, hasOnlyDigits, &Has::word).begin();
    const auto byWord = [](const Has& has) { return std::tie(has.word, has.entry); };
    std::ranges::sort(pairs.begin(), numbersEnd, {}, byWord);
    std::ranges::sort(numbersEnd, pairs.end(), {}, byWord);
    m_having.reserve(pairs.size());
    m_text = '\n';
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        if (pairs.begin() + static_cast<std::ptrdiff_t>(i) == numbersEnd) {
            m_lettersStart = m_text.size();
        }
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
    if (numbersEnd == pairs.end()) {
        m_lettersStart = m_text.size();
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
    const std::size_t start = hasOnlyDigits(part) ? 0 : m_lettersStart;
    for (std::size_t at = text.find(part, start); at != std::string_view::npos;) {
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
        if (placeOf(word(middle)) < placeOf(sought)) {
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

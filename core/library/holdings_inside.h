// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <mutex>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/library/bits.h"
#include "core/library/facet.h"
#include "core/library/holdings.h"
#include "core/library/search.h"
#include "core/library/word_table.h"

namespace matwright {

// Holdings::mostPhotos() goes no further; a sketch with more photos counts with these.
inline constexpr std::uint32_t photoCountLimit = 100;

// What Switch facets tell apart.
enum class Switch : std::uint8_t { RoomForTitle, RoomForJournaling, Favourite };
inline constexpr std::size_t switchCount = 3;

// What Holdings are made of: the packed entries in order, and for each property which entries have
// which value.
struct Holdings::Inside {
    std::string packed;
    std::vector<std::uint32_t> starts;  // one more than there are entries
    std::vector<std::int32_t> families;

    std::vector<std::string> tagNames;
    std::vector<std::string> folderNames;
    std::vector<Size> pageSizes;
    std::vector<Size> printSizes;

    Facet photos;       // 0 to photoCountLimit
    Facet prints;       // as printSizes
    Facet pages;        // as pageSizes
    Facet doublePages;  // 0 single, 1 double
    Facet photoWays;    // as allPhotoWays
    Facet switches;     // as Switch
    Facet tags;         // as tagNames
    Facet folders;      // as folderNames; a folder has what is below it too

    std::vector<std::int64_t> modified;  // of the file, in nanoseconds
    std::vector<std::int32_t> useCounts;
    std::vector<std::int64_t> lastUsed;  // in seconds; the smallest number where never

    // Open addressing by the hash of the path: an entry's number + 1, or 0.
    std::vector<std::uint32_t> pathSlots;

    std::size_t size() const { return starts.size() - 1; }
    std::string_view packedEntry(std::size_t index) const {
        return std::string_view(packed).substr(starts[index], starts[index + 1] - starts[index]);
    }
    std::optional<std::size_t> indexOf(std::string_view path) const;
    // Where in pathSlots to begin to look for a path.
    std::size_t slotOf(std::string_view path) const;

    // Made when first asked for.
    const WordTable& words() const;
    // All entries in that order, and the place of each entry in it; empty for SearchOrder::Name.
    struct Order {
        std::once_flag once;
        std::vector<std::uint32_t> entries;
        std::vector<std::uint32_t> places;
    };
    const Order& order(SearchOrder order) const;

  private:
    mutable std::once_flag m_wordsOnce;
    mutable WordTable m_words;
    mutable Order m_orders[4];
};

}  // namespace matwright

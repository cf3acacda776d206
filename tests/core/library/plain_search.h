// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/library/search.h"

namespace matwright::test {

// The same search by looking at every entry, one after another: what search() is measured against.
// Words are compared as ASCII.
bool passes(const LibraryEntry& entry, const Query& query);
std::vector<std::uint32_t> plainSearch(const std::vector<LibraryEntry>& entries,
                                       const Query& query);
FilterCounts plainCounts(const Holdings& holdings, const std::vector<LibraryEntry>& entries,
                         const Query& query);

}  // namespace matwright::test

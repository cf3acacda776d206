// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <ranges>
#include <vector>

namespace matwright::sheets {

// 0, 1, …, n - 1: to be sorted by something.
inline std::vector<std::size_t> indexesBelow(std::size_t n) {
    std::vector<std::size_t> all;
    all.reserve(n);
    std::ranges::copy(std::views::iota(std::size_t{0}, n), std::back_inserter(all));
    return all;
}

}  // namespace matwright::sheets

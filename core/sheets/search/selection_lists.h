// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "core/sheets/search/shape_table.h"

namespace matwright::sheets {

// How many of each kind, small enough to be compared and weighed a whole selection at a time.
inline constexpr std::size_t mostCountedKinds = 64;
using Counts = std::array<std::int16_t, mostCountedKinds>;
// Weights of kinds, each at most heaviest.
using SmallWeights = Counts;
inline constexpr std::int16_t heaviest = 32'000;
// No kind may have more copies, so that sums of weights stay within 32 bits.
inline constexpr int mostCountedCopies = 250;

inline std::int32_t weightOf(const Counts& counts, const SmallWeights& weights) {
    std::int32_t sum = 0;
    for (std::size_t i = 0; i < mostCountedKinds; ++i) {
        sum += std::int32_t{counts[i]} * weights[i];
    }
    return sum;
}

// What is left of `state` once `taken` is gone, which may hold more than there is.
inline Counts without(const Counts& state, const Counts& taken) {
    Counts rest;
    for (std::size_t i = 0; i < mostCountedKinds; ++i) {
        const auto more = static_cast<std::int16_t>(state[i] - taken[i]);
        rest[i] = more > 0 ? more : std::int16_t{0};
    }
    return rest;
}

// The selections that fit on one stock and to which no piece could be added.
using SelectionList = std::vector<Counts>;

// Of a complete table, for each stock. Those that leave more than `mostWaste` of the sheet are left
// out.
std::vector<SelectionList> fullSelections(const ShapeTable& table, const Reduced& reduced,
                                          std::int64_t mostWaste, Work& work);

}  // namespace matwright::sheets

// SPDX-License-Identifier: MIT
#include "core/tone/stretch.h"

#include <algorithm>
#include <numeric>

namespace matwright {

namespace {

constexpr std::uint64_t million = 1'000'000;

}  // namespace

ToneRange rangeWithout(std::span<const std::uint32_t, 256> counts, std::uint32_t share) {
    const std::uint64_t all = std::accumulate(counts.begin(), counts.end(), std::uint64_t{0});
    if (all == 0) {
        return {};
    }
    const std::uint64_t clipped = all * share;  // in millionths of one
    ToneRange range;
    std::uint64_t below = 0;
    while ((below += counts[static_cast<std::size_t>(range.low)] * million) <= clipped) {
        ++range.low;
    }
    std::uint64_t above = 0;
    while ((above += counts[static_cast<std::size_t>(range.high)] * million) <= clipped) {
        --range.high;
    }
    return range;
}

std::array<std::uint8_t, 256> stretchOver(ToneRange range) {
    std::array<std::uint8_t, 256> table{};
    const int width = std::max(1, range.high - range.low);
    for (int value = 0; value < 256; ++value) {
        const int along = std::clamp(value - range.low, 0, width);
        const int place = (2 * 255 * along + width) / (2 * width);
        table[static_cast<std::size_t>(value)] =
            static_cast<std::uint8_t>(range.low == range.high && value >= range.low ? 255 : place);
    }
    return table;
}

}  // namespace matwright

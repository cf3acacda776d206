// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <span>

namespace matwright {

// What the simplest colour balance is made of (N. Limare, J.-L. Lisani, J.-M. Morel, A. B. Petro,
// C. Sbert, "Simplest Color Balance", Image Processing On Line 1, 2011): of every channel's values
// a share is clipped at either end, and the rest is stretched over the full range.

// low <= high, within 0 .. 255
struct ToneRange {
    int low = 0;
    int high = 255;
    friend bool operator==(ToneRange, ToneRange) = default;
};

// The range outside of which lies, at either end, at most `share` (in millionths, below a half) of
// what was counted; 0 .. 255 where nothing was.
ToneRange rangeWithout(std::span<const std::uint32_t, 256> counts, std::uint32_t share);

// Each value's place when the range is spread over 0 .. 255, to the nearest; what lies outside is
// clipped. A range of one value splits there: below it 0, from it on 255.
std::array<std::uint8_t, 256> stretchOver(ToneRange range);

}  // namespace matwright

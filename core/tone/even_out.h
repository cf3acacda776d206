// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>

#include "core/tone/stretch.h"
#include "core/tone/tone.h"

namespace matwright {

// The automatic part of a tone, as few numbers. It never does more than the caps below, whatever
// the photo.
struct EvenOut {
    static constexpr std::uint32_t clippedShare = 5'000;  // millionths: 0.5 % at either end
    static constexpr int highestLow = 64;                 // so contrast at most doubles
    static constexpr int lowestHigh = 191;
    static constexpr std::int64_t mostBrightened = -400;  // bends, see curve.h
    static constexpr std::int64_t mostDarkened = 250;
    static constexpr std::int64_t mostBalance = 1'060;  // thousandths: 6 %

    ToneRange range;                                           // of all channels, to 0 .. 255
    std::int64_t bend = 0;                                     // of all channels
    std::array<std::int64_t, 3> gain = {1'000, 1'000, 1'000};  // thousandths, 1,000 .. mostBalance

    // 0 .. fullTone
    std::int64_t toneOf(int value, std::size_t channel) const;
    friend bool operator==(const EvenOut&, const EvenOut&) = default;
};

// Nothing (the values above) where the photo has the full range already, or where it has so little
// of it (a blank wall) that there is nothing to go by.
EvenOut evenOutOf(const Histogram& sample);

}  // namespace matwright

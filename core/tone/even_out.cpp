// SPDX-License-Identifier: MIT
#include "core/tone/even_out.h"

#include <algorithm>
#include <numeric>

#include "core/tone/curve.h"

namespace matwright {

namespace {

constexpr int nearlyFull = 4;    // values short of either end that count as the full range
constexpr int leastToGoBy = 32;  // values between the ends of what is not clipped
// An even grey of 18 % reflectance in sRGB (118 of 255), which exposures are metered for: common
// practice, no source.
constexpr std::int64_t middleGrey = 30'326;
// Luma of ITU-R BT.709 in 256ths.
constexpr std::array<std::int64_t, 3> lumaShares = {54, 183, 19};

ToneRange commonRange(const Histogram& sample) {
    std::array<std::uint32_t, 256> together{};
    for (const auto& channel : sample.counts) {
        for (std::size_t value = 0; value < together.size(); ++value) {
            together[value] += channel[value];
        }
    }
    return rangeWithout(together, EvenOut::clippedShare);
}

// The sample's mean luma as `even` shows it, 0 .. fullTone.
std::int64_t meanLuma(const Histogram& sample, const EvenOut& even) {
    std::int64_t mean = 0;
    for (std::size_t channel = 0; channel < sample.counts.size(); ++channel) {
        std::int64_t sum = 0;
        std::int64_t count = 0;
        for (int value = 0; value < 256; ++value) {
            const std::int64_t n = sample.counts[channel][static_cast<std::size_t>(value)];
            sum += n * even.toneOf(value, channel);
            count += n;
        }
        mean += lumaShares[channel] * (sum / std::max<std::int64_t>(count, 1)) / 256;
    }
    return mean;
}

// Half the way to a middle grey.
std::int64_t bendFor(std::int64_t mean) {
    const std::int64_t from = std::clamp<std::int64_t>(mean, 1, fullTone - 1);
    return std::clamp(bendBetween(from, (from + middleGrey) / 2), EvenOut::mostBrightened,
                      EvenOut::mostDarkened);
}

// The lights of a channel that is weaker than the strongest are brought up to it.
std::array<std::int64_t, 3> gainsFor(const Histogram& sample, const EvenOut& even) {
    std::array<std::int64_t, 3> lights{};
    for (std::size_t channel = 0; channel < lights.size(); ++channel) {
        const ToneRange range = rangeWithout(sample.counts[channel], EvenOut::clippedShare);
        lights[channel] = std::max<std::int64_t>(even.toneOf(range.high, channel), 1);
    }
    const std::int64_t strongest = std::ranges::max(lights);
    std::array<std::int64_t, 3> gains{};
    for (std::size_t channel = 0; channel < lights.size(); ++channel) {
        gains[channel] = std::min(strongest * 1'000 / lights[channel], EvenOut::mostBalance);
    }
    return gains;
}

}  // namespace

std::int64_t EvenOut::toneOf(int value, std::size_t channel) const {
    const std::int64_t width = range.high - range.low;
    const std::int64_t along = std::clamp<std::int64_t>(value - range.low, 0, width);
    const std::int64_t tone = bent(along * fullTone / width, bend);
    return std::min(tone * gain[channel] / 1'000, fullTone);
}

EvenOut evenOutOf(const Histogram& sample) {
    const ToneRange used = commonRange(sample);
    EvenOut even;
    if ((used.low <= nearlyFull && used.high >= 255 - nearlyFull) ||
        used.high - used.low < leastToGoBy) {
        return even;
    }
    even.range = {std::min(used.low, EvenOut::highestLow),
                  std::max(used.high, EvenOut::lowestHigh)};
    even.bend = bendFor(meanLuma(sample, even));
    even.gain = gainsFor(sample, even);
    return even;
}

}  // namespace matwright

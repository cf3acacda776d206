// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cassert>

#include "core/tone/curve.h"
#include "core/tone/even_out.h"
#include "core/tone/tone.h"

namespace matwright {

namespace {

constexpr std::size_t red = 0;
constexpr std::size_t blue = 2;

// Bends at the ends of the sliders; the other way they bend by the opposite.
constexpr std::int64_t largestBrightness = 600;
constexpr std::int64_t largestContrast = 1'500;
constexpr std::int64_t largestWarmth = 250;

bool isSlider(int value) {
    return value >= -100 && value <= 100;
}

std::int64_t brightening(int slider, std::int64_t largest) {
    const std::int64_t bend = -largest * std::abs(slider) / 100;
    return slider >= 0 ? bend : oppositeBend(bend);
}

std::int64_t contrasting(int slider) {
    const std::int64_t bend = largestContrast * std::abs(slider) / 100;
    return slider >= 0 ? bend : oppositeBend(bend);
}

// Red up and blue down, both ends kept: white stays white.
std::int64_t warming(int slider, std::size_t channel) {
    if (channel == red || channel == blue) {
        return brightening(channel == red ? slider : -slider, largestWarmth);
    }
    return 0;
}

std::uint8_t toByte(std::int64_t tone) {
    return static_cast<std::uint8_t>((tone * 255 + fullTone / 2) / fullTone);
}

std::uint8_t mixed(int luma, int channel, int saturation) {
    return static_cast<std::uint8_t>(
        std::clamp(luma + (((channel - luma) * saturation + 128) >> 8), 0, 255));
}

}  // namespace

bool isSound(const Tone& tone) {
    return isSlider(tone.brightness) && isSlider(tone.contrast) && isSlider(tone.warmth) &&
           isSlider(tone.saturation) && tone.sharpen >= 0 && tone.sharpen <= 100;
}

bool ToneMap::isIdentity() const {
    return *this == toneMapOf({}, {});
}

ToneMap toneMapOf(const Tone& tone, const Histogram& sample) {
    assert(isSound(tone));
    const EvenOut even = tone.evenOut ? evenOutOf(sample) : EvenOut();
    const std::int64_t bright = brightening(tone.brightness, largestBrightness);
    const std::int64_t contrast = contrasting(tone.contrast);
    ToneMap map;
    for (std::size_t channel = 0; channel < map.curve.size(); ++channel) {
        for (int value = 0; value < 256; ++value) {
            std::int64_t t = even.toneOf(value, channel);
            t = contrasted(bent(t, bright), contrast);
            map.curve[channel][static_cast<std::size_t>(value)] =
                toByte(bent(t, warming(tone.warmth, channel)));
        }
    }
    map.saturation = 256 + tone.saturation * 256 / 100;
    return map;
}

void apply(const ToneMap& map, Raster& raster) {
    if (map.isIdentity()) {
        return;
    }
    const auto& [reds, greens, blues] = map.curve;
    const bool mixes = map.saturation != 256;
    for (std::size_t i = 0; i + 2 < raster.pixels.size(); i += 3) {
        std::uint8_t* pixel = &raster.pixels[i];
        const int r = reds[pixel[0]];
        const int g = greens[pixel[1]];
        const int b = blues[pixel[2]];
        const int luma = mixes ? (54 * r + 183 * g + 19 * b + 128) >> 8 : 0;
        pixel[0] = mixes ? mixed(luma, r, map.saturation) : static_cast<std::uint8_t>(r);
        pixel[1] = mixes ? mixed(luma, g, map.saturation) : static_cast<std::uint8_t>(g);
        pixel[2] = mixes ? mixed(luma, b, map.saturation) : static_cast<std::uint8_t>(b);
    }
}

}  // namespace matwright

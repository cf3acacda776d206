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

// Pixels in planes, a few at a time, so that a compiler can mix many at once.
struct Planes {
    static constexpr std::size_t most = 256;
    std::array<std::array<std::int32_t, most>, 3> channel;

    void read(const ToneMap& map, const std::uint8_t* pixels, std::size_t count) {
        for (std::size_t i = 0; i < count; ++i) {
            for (std::size_t c = 0; c < channel.size(); ++c) {
                channel[c][i] = map.curve[c][pixels[3 * i + c]];
            }
        }
    }

    void mix(std::int32_t saturation) {
        auto& [r, g, b] = channel;
        for (std::size_t i = 0; i < most; ++i) {
            const std::int32_t luma = (54 * r[i] + 183 * g[i] + 19 * b[i] + 128) >> 8;
            r[i] = std::clamp(luma + (((r[i] - luma) * saturation + 128) >> 8), 0, 255);
            g[i] = std::clamp(luma + (((g[i] - luma) * saturation + 128) >> 8), 0, 255);
            b[i] = std::clamp(luma + (((b[i] - luma) * saturation + 128) >> 8), 0, 255);
        }
    }

    void write(std::uint8_t* pixels, std::size_t count) const {
        for (std::size_t i = 0; i < count; ++i) {
            for (std::size_t c = 0; c < channel.size(); ++c) {
                pixels[3 * i + c] = static_cast<std::uint8_t>(channel[c][i]);
            }
        }
    }
};

void applyCurves(const ToneMap& map, Raster& raster) {
    const auto& [reds, greens, blues] = map.curve;
    for (std::size_t i = 0; i + 2 < raster.pixels.size(); i += 3) {
        std::uint8_t* pixel = &raster.pixels[i];
        pixel[0] = reds[pixel[0]];
        pixel[1] = greens[pixel[1]];
        pixel[2] = blues[pixel[2]];
    }
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
    if (map.saturation == 256) {
        applyCurves(map, raster);
        return;
    }
    Planes planes{};
    const std::size_t pixels = raster.pixels.size() / 3;
    for (std::size_t at = 0; at < pixels; at += Planes::most) {
        const std::size_t count = std::min(Planes::most, pixels - at);
        planes.read(map, &raster.pixels[3 * at], count);
        planes.mix(map.saturation);
        planes.write(&raster.pixels[3 * at], count);
    }
}

}  // namespace matwright

// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cmath>
#include <functional>

#include "core/tone/tone.h"
#include "tests/support/random_sketch.h"

namespace matwright::test {

using ColourAt = std::function<std::array<int, 3>(int x, int y)>;

inline Raster raster(PixelSize size, const ColourAt& colourAt) {
    Raster made{size, {}};
    made.pixels.reserve(static_cast<std::size_t>(3 * size.count()));
    for (int y = 0; y < size.height; ++y) {
        for (int x = 0; x < size.width; ++x) {
            for (const int value : colourAt(x, y)) {
                made.pixels.push_back(static_cast<std::uint8_t>(std::clamp(value, 0, 255)));
            }
        }
    }
    return made;
}

// Soft hills of light with noise, between `low` and `high`, with a tint on each channel.
inline Raster hills(Random& random, PixelSize size, int low, int high,
                    std::array<double, 3> tint = {1, 1, 1}) {
    return raster(size, [&](int x, int y) {
        const double light = 0.5 + 0.3 * std::sin(x * 0.05) + 0.2 * std::cos(y * 0.08);
        std::array<int, 3> colour{};
        for (std::size_t c = 0; c < 3; ++c) {
            const auto noise = static_cast<double>(below(random, 9)) - 4;
            colour[c] = static_cast<int>((low + (high - low) * light + noise) * tint[c]);
        }
        return colour;
    });
}

}  // namespace matwright::test

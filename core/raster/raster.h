// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace matwright {

// Whole pixels; a sound size has both sides positive.
struct PixelSize {
    int width = 0;
    int height = 0;
    friend constexpr bool operator==(PixelSize, PixelSize) = default;
    constexpr PixelSize turned() const { return {height, width}; }
    constexpr bool isPositive() const { return width > 0 && height > 0; }
    constexpr std::int64_t count() const { return std::int64_t{width} * height; }
};

// A picture in memory: sRGB, 8 bits a channel, red green blue, rows from the top without padding.
// What was transparent has been laid on white.
struct Raster {
    PixelSize size;
    std::vector<std::uint8_t> pixels;  // 3 * size.count()

    std::span<const std::uint8_t> row(int y) const {
        const auto stride = std::size_t{3} * static_cast<std::size_t>(size.width);
        return std::span(pixels).subspan(stride * static_cast<std::size_t>(y), stride);
    }
    friend bool operator==(const Raster&, const Raster&) = default;
};

}  // namespace matwright

// SPDX-License-Identifier: MIT
#include "core/prints/sheet_pixels.h"

#include <algorithm>

namespace matwright {

namespace {

constexpr std::size_t bands = 3;

std::size_t offsetOf(PixelSize size, int x, int y) {
    return bands * (static_cast<std::size_t>(y) * static_cast<std::size_t>(size.width) +
                    static_cast<std::size_t>(x));
}

}  // namespace

Raster whiteSheet(PixelSize size) {
    return {size, std::vector<std::uint8_t>(bands * static_cast<std::size_t>(size.count()), 255)};
}

void lay(Raster& sheet, const Raster& picture, PixelPoint at) {
    const int left = std::max(0, at.x);
    const int right = std::min(sheet.size.width, at.x + picture.size.width);
    const int top = std::max(0, at.y);
    const int bottom = std::min(sheet.size.height, at.y + picture.size.height);
    if (left >= right) {
        return;
    }
    for (int y = top; y < bottom; ++y) {
        const auto row =
            picture.row(y - at.y).subspan(bands * static_cast<std::size_t>(left - at.x),
                                          bands * static_cast<std::size_t>(right - left));
        std::ranges::copy(row, sheet.pixels.data() + offsetOf(sheet.size, left, y));
    }
}

Raster turnedRight(const Raster& picture) {
    Raster result = whiteSheet(picture.size.turned());
    for (int y = 0; y < picture.size.height; ++y) {
        for (int x = 0; x < picture.size.width; ++x) {
            std::copy_n(
                picture.pixels.data() + offsetOf(picture.size, x, y), bands,
                result.pixels.data() + offsetOf(result.size, picture.size.height - 1 - y, x));
        }
    }
    return result;
}

}  // namespace matwright

// SPDX-License-Identifier: MIT
#include "tests/support/busy_photo.h"

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

#include "core/photo/photo_source.h"
#include "tests/support/temporary_folder.h"

namespace matwright::test {

namespace {

constexpr int waves = 9;

// One row or column of waves each: cheap, because the picture is made of their products.
std::vector<std::vector<float>> waveTable(int length, std::mt19937& random) {
    std::uniform_real_distribution<float> phase(0, 6.28F);
    std::vector<std::vector<float>> table;
    for (int wave = 0; wave < waves; ++wave) {
        const float start = phase(random);
        const float pace = 0.002F * std::pow(2.2F, static_cast<float>(wave));
        std::vector<float> values(static_cast<std::size_t>(length));
        for (std::size_t i = 0; i < values.size(); ++i) {
            values[i] = std::sin(start + pace * static_cast<float>(i));
        }
        table.push_back(std::move(values));
    }
    return table;
}

std::uint8_t held(float value) {
    return static_cast<std::uint8_t>(std::clamp(value, 0.0F, 255.0F));
}

}  // namespace

Raster busyPhoto(PixelSize size, std::uint32_t seed) {
    std::mt19937 random(seed);
    const auto across = waveTable(size.width, random);
    const auto down = waveTable(size.height, random);
    Raster raster{size, std::vector<std::uint8_t>(3 * static_cast<std::size_t>(size.count()))};
    std::size_t at = 0;
    std::uint32_t noise = seed | 1U;
    for (std::size_t y = 0; y < static_cast<std::size_t>(size.height); ++y) {
        for (std::size_t x = 0; x < static_cast<std::size_t>(size.width); ++x) {
            float light = 128;
            for (std::size_t wave = 0; wave < waves; ++wave) {
                light += 34.0F / (1.0F + 0.35F * static_cast<float>(wave)) * across[wave][x] *
                         down[wave][y];
            }
            const bool inside = (x / 211 + y / 173 + seed) % 7 == 0;
            noise = noise * 1664525U + 1013904223U;
            light += static_cast<float>(noise >> 28U) - 7.5F + (inside ? 60.0F : 0.0F);
            raster.pixels[at++] = held(light + 25 * across[1][x]);
            raster.pixels[at++] = held(light);
            raster.pixels[at++] = held(light - 20 + 35 * down[2][y]);
        }
    }
    return raster;
}

std::filesystem::path writeBusyPhoto(const std::filesystem::path& file, PixelSize size,
                                     std::uint32_t seed, int quality) {
    writeFile(file, smallJpeg(busyPhoto(size, seed), quality));
    return file;
}

}  // namespace matwright::test

// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <vector>

#include "core/tone/tone.h"

namespace matwright {

namespace {

// Binomial weights are close to a Gaussian of sqrt(6 / 4) = 1.2 pixels.
constexpr std::array<std::int32_t, 7> weights = {1, 6, 15, 20, 15, 6, 1};
constexpr int reach = 3;
constexpr std::int32_t weightsSquared = 64 * 64;
// What amount 100 adds of the difference to the blurred luma, in hundredths.
constexpr std::int64_t strongest = 150;

std::int32_t lumaAt(std::span<const std::uint8_t> row, int x) {
    const auto i = std::size_t{3} * static_cast<std::size_t>(x);
    return 54 * row[i] + 183 * row[i + 1] + 19 * row[i + 2];
}

// Luma blurred along rows, for the rows around one; made before those rows are changed.
class BlurredRows {
  public:
    explicit BlurredRows(const Raster& raster) : m_raster(raster) {
        m_luma.resize(static_cast<std::size_t>(raster.size.width + 2 * reach));
        for (auto& row : m_rows) {
            row.resize(static_cast<std::size_t>(raster.size.width));
        }
    }

    void make(int y) {
        const int width = m_raster.size.width;
        const auto row = m_raster.row(y);
        for (int x = -reach; x < width + reach; ++x) {
            m_luma[static_cast<std::size_t>(x + reach)] = lumaAt(row, std::clamp(x, 0, width - 1));
        }
        std::vector<std::int32_t>& blurred = rowAt(y);
        for (std::size_t x = 0; x < blurred.size(); ++x) {
            std::int32_t sum = 0;
            for (std::size_t i = 0; i < weights.size(); ++i) {
                sum += weights[i] * m_luma[x + i];
            }
            blurred[x] = sum;
        }
    }

    std::int32_t at(int x, int y) {
        std::int32_t sum = 0;
        for (int i = -reach; i <= reach; ++i) {
            const int clamped = std::clamp(y + i, 0, m_raster.size.height - 1);
            sum += weights[static_cast<std::size_t>(i + reach)] *
                   rowAt(clamped)[static_cast<std::size_t>(x)];
        }
        return sum / weightsSquared;
    }

  private:
    std::vector<std::int32_t>& rowAt(int y) {
        return m_rows[static_cast<std::size_t>(y) % m_rows.size()];
    }

    const Raster& m_raster;
    std::vector<std::int32_t> m_luma;
    std::array<std::vector<std::int32_t>, 2 * reach + 1> m_rows;
};

void add(std::uint8_t& channel, std::int64_t difference) {
    channel = static_cast<std::uint8_t>(std::clamp<std::int64_t>(channel + difference, 0, 255));
}

}  // namespace

void sharpen(Raster& raster, int amount) {
    if (amount <= 0 || !raster.size.isPositive()) {
        return;
    }
    // Lumas are in 256ths, amount and strongest in hundredths.
    constexpr std::int64_t divisor = std::int64_t{256} * 100 * 100;
    BlurredRows blurred(raster);
    const int rows = raster.size.height;
    for (int y = 0; y < std::min(reach, rows); ++y) {
        blurred.make(y);
    }
    for (int y = 0; y < rows; ++y) {
        if (y + reach < rows) {
            blurred.make(y + reach);
        }
        for (int x = 0; x < raster.size.width; ++x) {
            const auto at = std::size_t{3} * (static_cast<std::size_t>(y) *
                                                  static_cast<std::size_t>(raster.size.width) +
                                              static_cast<std::size_t>(x));
            const std::int64_t detail = lumaAt(raster.row(y), x) - blurred.at(x, y);
            const std::int64_t scaled = detail * amount * strongest;
            const std::int64_t difference =
                (scaled + (scaled < 0 ? -divisor : divisor) / 2) / divisor;
            for (std::size_t channel = 0; channel < 3; ++channel) {
                add(raster.pixels[at + channel], difference);
            }
        }
    }
}

}  // namespace matwright

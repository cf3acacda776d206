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
constexpr std::int32_t strongest = 150;

std::int32_t lumaAt(std::span<const std::uint8_t> row, int x) {
    const auto i = std::size_t{3} * static_cast<std::size_t>(x);
    return 54 * row[i] + 183 * row[i + 1] + 19 * row[i + 2];
}

// The weighted sum of seven rows, or of one row shifted, place by place.
void addUp(const std::array<const std::int32_t*, 7>& rows, std::vector<std::int32_t>& sums) {
    for (std::size_t x = 0; x < sums.size(); ++x) {
        sums[x] = weights[0] * (rows[0][x] + rows[6][x]) + weights[1] * (rows[1][x] + rows[5][x]) +
                  weights[2] * (rows[2][x] + rows[4][x]) + weights[3] * rows[3][x];
    }
}

// Luma blurred along rows, for the rows around one; made before those rows are changed.
class BlurredRows {
  public:
    explicit BlurredRows(const Raster& raster) : m_raster(raster) {
        const int reached = raster.size.width + 2 * reach;
        m_luma.resize(static_cast<std::size_t>(reached));
        for (auto& row : m_rows) {
            row.resize(static_cast<std::size_t>(raster.size.width));
        }
    }

    void make(int y) {
        const int width = m_raster.size.width;
        const auto row = m_raster.row(y);
        int x = -reach;
        for (std::int32_t& luma : m_luma) {
            luma = lumaAt(row, std::clamp(x++, 0, width - 1));
        }
        std::array<const std::int32_t*, weights.size()> shifted{};
        for (std::size_t i = 0; i < shifted.size(); ++i) {
            shifted[i] = m_luma.data() + i;
        }
        addUp(shifted, rowAt(y));
    }

    // Blurred both ways, weightsSquared times.
    void blur(int y, std::vector<std::int32_t>& blurred) {
        std::array<const std::int32_t*, weights.size()> around{};
        int row = y - reach;
        for (const std::int32_t*& luma : around) {
            luma = rowAt(std::clamp(row++, 0, m_raster.size.height - 1)).data();
        }
        addUp(around, blurred);
    }

  private:
    std::vector<std::int32_t>& rowAt(int y) {
        return m_rows[static_cast<std::size_t>(y) % m_rows.size()];
    }

    const Raster& m_raster;
    std::vector<std::int32_t> m_luma;
    std::array<std::vector<std::int32_t>, 2 * reach + 1> m_rows;
};

void add(std::uint8_t& channel, std::int32_t difference) {
    channel = static_cast<std::uint8_t>(std::clamp(channel + difference, 0, 255));
}

// Lumas are in 256ths, amount and strongest in hundredths; their product stays below 2^30.
void addDetail(std::span<std::uint8_t> row, const std::vector<std::int32_t>& blurred, int amount) {
    constexpr std::int32_t divisor = 256 * 100 * 100;
    for (std::size_t x = 0; x < blurred.size(); ++x) {
        const std::int32_t detail = lumaAt(row, static_cast<int>(x)) - blurred[x] / weightsSquared;
        const std::int32_t scaled = detail * amount * strongest;
        const std::int32_t difference = (scaled + (scaled < 0 ? -divisor : divisor) / 2) / divisor;
        for (std::size_t channel = 0; channel < 3; ++channel) {
            add(row[3 * x + channel], difference);
        }
    }
}

}  // namespace

void sharpen(Raster& raster, int amount) {
    if (amount <= 0 || !raster.size.isPositive()) {
        return;
    }
    BlurredRows rows(raster);
    const auto width = static_cast<std::size_t>(raster.size.width);
    std::vector<std::int32_t> blurred(width);
    const int height = raster.size.height;
    for (int y = 0; y < std::min(reach, height); ++y) {
        rows.make(y);
    }
    for (int y = 0; y < height; ++y) {
        if (y + reach < height) {
            rows.make(y + reach);
        }
        rows.blur(y, blurred);
        addDetail(
            std::span(raster.pixels).subspan(3 * width * static_cast<std::size_t>(y), 3 * width),
            blurred, amount);
    }
}

}  // namespace matwright

// SPDX-License-Identifier: MIT
#include "core/photo/upright_sink.h"

#include <array>
#include <cstring>

namespace matwright {

namespace {

// What turns a stored pixel's place upright: first the axes change places, then each may run
// backwards. EXIF 2.32, table of tag 0x0112: 0th row and 0th column.
struct Turn {
    bool swapsAxes;
    bool mirrorsX;
    bool mirrorsY;
};
constexpr std::array turns{
    Turn{false, false, false}, Turn{false, true, false}, Turn{false, true, true},
    Turn{false, false, true},  Turn{true, false, false}, Turn{true, true, false},
    Turn{true, true, true},    Turn{true, false, true},
};

Turn turnOf(int orientation) {
    return turns[static_cast<std::size_t>(orientation - 1)];
}

class Pouring {
  public:
    Pouring(PixelSize stored, int orientation, const std::stop_token& stop)
        : m_turn(turnOf(orientation)), m_stop(&stop) {
        m_poured.raster.size = uprightSize(stored, orientation);
        m_poured.raster.pixels.resize(3 * static_cast<std::size_t>(m_poured.raster.size.count()));
    }

    bool take(VipsRegion* region, const VipsRect& area) {
        for (int y = area.top; y < area.top + area.height; ++y) {
            takeRow(VIPS_REGION_ADDR(region, area.left, y), area.left, y, area.width);
        }
        m_poured.rows = area.top + area.height;
        return !m_stop->stop_requested();
    }

    Poured finish(bool isWhole) && {
        m_poured.isWhole = isWhole;
        if (!isWhole) {
            m_poured.raster = {};
        }
        return std::move(m_poured);
    }

  private:
    std::size_t placeOf(int x, int y) const {
        const PixelSize size = m_poured.raster.size;
        const int right = m_turn.swapsAxes ? y : x;
        const int down = m_turn.swapsAxes ? x : y;
        const int column = m_turn.mirrorsX ? size.width - 1 - right : right;
        const int row = m_turn.mirrorsY ? size.height - 1 - down : down;
        return 3 * (static_cast<std::size_t>(row) * static_cast<std::size_t>(size.width) +
                    static_cast<std::size_t>(column));
    }

    void takeRow(const VipsPel* from, int left, int y, int width) {
        std::uint8_t* to = m_poured.raster.pixels.data();
        if (!m_turn.swapsAxes && !m_turn.mirrorsX) {
            std::memcpy(to + placeOf(left, y), from, 3 * static_cast<std::size_t>(width));
            return;
        }
        for (int x = left; x < left + width; ++x, from += 3) {
            std::memcpy(to + placeOf(x, y), from, 3);
        }
    }

    Turn m_turn;
    const std::stop_token* m_stop;
    Poured m_poured;
};

int pour(VipsRegion* region, VipsRect* area, void* pouring) {
    return static_cast<Pouring*>(pouring)->take(region, *area) ? 0 : -1;
}

}  // namespace

PixelSize uprightSize(PixelSize stored, int orientation) {
    return turnOf(orientation).swapsAxes ? stored.turned() : stored;
}

Poured pourUpright(const vips::VImage& image, int orientation, const std::stop_token& stop) {
    Pouring pouring({image.width(), image.height()}, orientation, stop);
    const std::stop_callback killing(stop,
                                     [&image] { vips_image_set_kill(image.get_image(), TRUE); });
    const bool isWhole = vips_sink_disc(image.get_image(), pour, &pouring) == 0;
    return std::move(pouring).finish(isWhole);
}

}  // namespace matwright

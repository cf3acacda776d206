// SPDX-License-Identifier: MIT
#include "core/prints/way_round.h"

#include <array>

namespace matwright {

WayRound wayRound(int orientation, int quarterTurns) {
    static constexpr std::array<WayRound, 8> ways{{{false, 0},
                                                   {true, 0},
                                                   {false, 2},
                                                   {true, 2},
                                                   {true, 3},
                                                   {false, 1},
                                                   {true, 1},
                                                   {false, 3}}};
    const bool legal = orientation >= 1 && orientation <= 8;
    WayRound way = legal ? ways[static_cast<std::size_t>(orientation - 1)] : WayRound{};
    way.quarters = (way.quarters + quarterTurns) % 4;
    return way;
}

PixelSize turned(const WayRound& way, PixelSize stored) {
    return way.quarters % 2 == 0 ? stored : stored.turned();
}

PixelPart storedPart(const WayRound& way, const PixelPart& shown, PixelSize stored) {
    PixelPart part = shown;
    PixelSize size = turned(way, stored);
    for (int quarter = 0; quarter < way.quarters; ++quarter) {
        part = {part.top, size.width - part.left - part.width, part.height, part.width};
        size = size.turned();
    }
    if (way.mirrored) {
        part.left = size.width - part.left - part.width;
    }
    return part;
}

PixelPart shownPart(const WayRound& way, const PixelPart& inStored, PixelSize stored) {
    PixelPart part = inStored;
    PixelSize size = stored;
    if (way.mirrored) {
        part.left = size.width - part.left - part.width;
    }
    for (int quarter = 0; quarter < way.quarters; ++quarter) {
        part = {size.height - part.top - part.height, part.left, part.height, part.width};
        size = size.turned();
    }
    return part;
}

vips::VImage turned(const WayRound& way, const vips::VImage& picture) {
    vips::VImage mirrored = way.mirrored ? picture.fliphor() : picture;
    switch (way.quarters) {
        case 1:
            return mirrored.rot90();
        case 2:
            return mirrored.rot180();
        case 3:
            return mirrored.rot270();
        default:
            return mirrored;
    }
}

}  // namespace matwright

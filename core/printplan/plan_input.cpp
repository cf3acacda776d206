// SPDX-License-Identifier: MIT
#include "core/printplan/plan_input.h"

#include <algorithm>

namespace matwright {

namespace {

// As in placesOf(): a side with a border is white beyond it, unless it meets another print.
Length seenBleed(const Print& print, Length bleed) {
    const bool isMeeting = print.from > 0 || print.to < 1;
    if (!print.border.isZero() && !isMeeting) {
        return {};
    }
    const Length beyond =
        std::max({print.trim.left(), print.trim.top(), print.paper.width - print.trim.right(),
                  print.paper.height - print.trim.bottom(), Length()});
    return std::min(bleed, beyond);
}

}  // namespace

PrintLook lookOf(const Print& print, const Photo& photo, Length bleed) {
    return {photo.content, print.paper,  print.trim, print.border, seenBleed(print, bleed),
            print.crop,    print.window, print.from, print.to,     print.tone};
}

}  // namespace matwright

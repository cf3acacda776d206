// SPDX-License-Identifier: MIT
#include "core/making/fold.h"

#include "core/making/making.h"

namespace matwright {

std::optional<FoldParting> foldParting(const Piece& slot, Length border, const PageSetup& setup) {
    const std::vector<Rect> sheets = pages(setup);
    if (sheets.size() != 2 || !slot.rotation.isZero()) {
        return std::nullopt;
    }
    const Rect trim = trimBox(slot);
    const FoldParting parting{sheets[0].right() - trim.left(), trim.right() - sheets[1].left()};
    if (parting.left <= border || parting.right <= border) {
        return std::nullopt;
    }
    return parting;
}

Size shownWindow(const Piece& slot, Length border, const PageSetup& setup) {
    const auto parting = foldParting(slot, border, setup);
    return parting ? parting->window(slot.size.height, border) : windowOf(slot, border);
}

}  // namespace matwright

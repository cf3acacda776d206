// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "core/making/fold.h"
#include "core/prints/print_job.h"

namespace matwright {

namespace {

// The trim in the middle of the paper, where the paper is the print size or what trim and bleed
// take.
void layOnPaper(Print& print, Size trim, std::optional<Size> printSize, Length bleed) {
    const Size wished = printSize.value_or(trim);
    print.paper = {std::max(wished.width, trim.width + 2 * bleed),
                   std::max(wished.height, trim.height + 2 * bleed)};
    const Point at{(print.paper.width - trim.width).halfRoundedDown(),
                   (print.paper.height - trim.height).halfRoundedDown()};
    print.trim = Rect::at(at, trim);
}

Print wholePrint(const Making& making, const Piece& slot, PieceId id, const Placement& placement,
                 Length bleed) {
    Print print;
    print.slot = id;
    print.photo = placement.photo;
    print.name = fmt::format("{} {}", pieceNumber(making.sketch, id), displayName(slot));
    print.border = placement.border;
    print.crop = placement.crop;
    print.window = windowOf(slot, placement.border);
    print.tone = making.work.photos.at(placement.photo).tone;
    layOnPaper(print, slot.size, slot.printSize, bleed);
    return print;
}

std::vector<Print> parted(const Print& whole, const FoldParting& parting, Length bleed) {
    const Length height = whole.trim.size().height;
    Print left = whole;
    left.window = parting.window(height, whole.border);
    Print right = left;
    const double at = parting.share(whole.border);
    left.to = at;
    right.from = at;
    left.name += ", left part";
    right.name += ", right part";
    layOnPaper(left, {parting.left, height}, std::nullopt, bleed);
    layOnPaper(right, {parting.right, height}, std::nullopt, bleed);
    return {left, right};
}

}  // namespace

std::vector<Print> printsOf(const Making& making, const PrintOptions& options) {
    std::vector<Print> prints;
    for (const PieceId id : making.sketch.order) {
        const auto placed = making.work.placements.find(id);
        if (placed == making.work.placements.end()) {
            continue;
        }
        const Piece& slot = making.sketch.pieces.at(id);
        const Placement& placement = placed->second;
        Print print = wholePrint(making, slot, id, placement, options.bleed);
        if (const auto parting = foldParting(slot, placement.border, making.sketch.page)) {
            std::ranges::copy(parted(print, *parting, options.bleed), std::back_inserter(prints));
        } else {
            prints.push_back(std::move(print));
        }
    }
    return prints;
}

}  // namespace matwright

// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "core/checks/amount_text.h"
#include "core/checks/finders.h"

namespace matwright {

namespace {

// More than these are not counted: the sentence says enough, and a heap of pieces stays quick.
constexpr std::size_t mostOverlapsTold = 10;

struct FoundOverlap {
    PieceId above;
    Length depth;
};

// How deep two areas run into each other: the shorter side of the box around what they share, which
// is exact for upright rectangles.
Length depthOf(const Region& shared) {
    const Size size = boundsOf(shared).size();
    return std::min(size.width, size.height);
}

std::vector<FoundOverlap> overlapsAbove(const CheckContext& context, const CheckedPiece& checked) {
    std::vector<FoundOverlap> found;
    for (const PieceId above : context.layering.nearAbove(checked.id)) {
        const Piece& other = context.sketch.pieces.at(above);
        const bool isPhoto = other.kind == PieceKind::PhotoSlot;
        if ((!isPhoto && !isPaper(other)) ||
            !checked.bounds.interiorIntersects(context.layering.bounds(above))) {
            continue;
        }
        const Region& own = isPhoto ? context.layering.outermostRegion(checked.id)
                                    : context.layering.trimRegion(checked.id);
        const Region shared = intersected(own, context.layering.outermostRegion(above));
        if (areaSquareInches(shared) > smallestOverlap) {
            found.push_back({above, depthOf(shared)});
        }
        if (found.size() == mostOverlapsTold) {
            break;
        }
    }
    return found;
}

std::string othersText(std::size_t count) {
    switch (count) {
        case 1:
            return "";
        case 2:
            return ", and one more piece";
        case mostOverlapsTold:
            return ", and many more pieces";
        default:
            return fmt::format(", and {} more pieces", count - 1);
    }
}

// Shares this close to the whole are rounding of curves.
constexpr double wholeShare = 0.9995;

std::string shareText(double share) {
    return share >= wholeShare ? "lies wholly"
           : share > 0.75      ? "is more than three quarters"
           : share > 0.5       ? "is more than half"
                               : "is more than a quarter";
}

}  // namespace

void findPhotosOverlap(const CheckContext& context, const CheckedPiece& checked,
                       Findings& findings) {
    if (checked.piece.kind != PieceKind::PhotoSlot) {
        return;
    }
    const std::vector<FoundOverlap> found = overlapsAbove(context, checked);
    if (found.empty()) {
        return;
    }
    std::vector<PieceId> pieces{checked.id};
    std::ranges::transform(found, std::back_inserter(pieces), &FoundOverlap::above);
    const FoundOverlap& first = found.front();
    const bool isPhoto = context.sketch.pieces.at(first.above).kind == PieceKind::PhotoSlot;
    findings.push_back(
        {CheckKind::PhotosOverlap, std::move(pieces),
         fmt::format("{} lies {} under {}{}; {}.", context.label(checked.id),
                     amountText(first.depth, context.settings.scale), context.label(first.above),
                     othersText(found.size()),
                     isPhoto ? "pull them apart" : "bring the photo forward or pull them apart")});
}

void findHidden(const CheckContext& context, const CheckedPiece& checked, Findings& findings) {
    const Piece& piece = checked.piece;
    const bool mayBeCovered = isPaper(piece) || piece.kind == PieceKind::Embellishment;
    const double share = context.layering.hiddenShare(checked.id);
    if (share <= 0.25 || (mayBeCovered && share < wholeShare)) {
        return;
    }
    findings.push_back(
        {CheckKind::Hidden,
         {checked.id},
         fmt::format("{} {} under other pieces; bring it forward or {}.", context.label(checked.id),
                     shareText(share), share >= wholeShare ? "leave it out" : "move it")});
}

}  // namespace matwright

// SPDX-License-Identifier: MIT
#include "core/family/family.h"

namespace matwright {

namespace {

// Twice the middle of the outermost box. Of the borders only a differing bottom one moves it off
// the trim's middle, downwards as the piece lies.
Point doubledMiddle(const Piece& piece) {
    Length excess;
    for (const Mat& mat : piece.mats) {
        excess += mat.bottomBorder.value_or(mat.border) - mat.border;
    }
    const Rect trim = trimBox(piece);
    return Point{trim.left() + trim.right(), trim.top() + trim.bottom()} +
           Point{(-excess).scaledRounded(piece.rotation.sine()),
                 excess.scaledRounded(piece.rotation.cosine())};
}

FamilyPiece familyPiece(const Piece& piece, Size surfaceSize) {
    FamilyPiece result;
    result.kind = piece.kind;
    result.shape = static_cast<std::uint8_t>(piece.shape.index());
    result.mats = static_cast<std::uint8_t>(piece.mats.size());
    result.print = piece.printSize.value_or(Size{});
    result.middle = doubledMiddle(piece) - Point{surfaceSize.width, surfaceSize.height};
    result.size = piece.size;
    result.rotation = piece.rotation;
    if (const auto* polygon = std::get_if<PolygonShape>(&piece.shape)) {
        for (const Point& corner : polygon->corners) {
            result.corners.push_back(
                {2 * corner.x - piece.size.width, 2 * corner.y - piece.size.height});
        }
    }
    return result;
}

}  // namespace

FamilyTraits familyTraits(const Sketch& sketch) {
    FamilyTraits traits{sketch.page.size, sketch.page.doublePage, {}};
    const Size surfaceSize = surface(sketch.page).size();
    traits.pieces.reserve(sketch.pieces.size());
    for (const auto& [id, piece] : sketch.pieces) {
        traits.pieces.push_back(familyPiece(piece, surfaceSize));
    }
    return traits;
}

}  // namespace matwright

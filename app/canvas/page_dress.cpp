// SPDX-License-Identifier: MIT
#include "app/canvas/page_dress.h"

#include <algorithm>

namespace matwright::app {

const Placement* PageDress::placementOf(PieceId id, const Placement* instead) const {
    return instead || !work ? instead : matwright::find(*work, id);
}

bool PageDress::dresses(PieceId id, const Piece& piece) const {
    if (!work || !pictures || (work->placements.empty() && work->papers.empty())) {
        return false;
    }
    return work->placements.contains(id) || work->papers.contains(piece.paper) ||
           std::ranges::any_of(piece.mats,
                               [this](const Mat& mat) { return work->papers.contains(mat.paper); });
}

}  // namespace matwright::app

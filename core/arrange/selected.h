// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <vector>

#include "core/sketch/edit.h"

namespace matwright::arrange {

// Pieces of a sketch, by pointers that live as long as the sketch is not changed.
struct Selected {
    PieceId id;
    const Piece* piece;
};

// The pieces of these ids, each once, from bottom to top.
std::vector<Selected> selectedPieces(const Sketch& sketch, std::span<const PieceId> ids);

// The trim bounds of all of them; nothing where there are none.
std::optional<Rect> boundsOf(const std::vector<Selected>& pieces);

// An edit that changes every piece that is not locked; those left equal are not mentioned.
Edit changedEach(const std::vector<Selected>& pieces,
                 const std::function<Piece(const Piece&)>& change);

}  // namespace matwright::arrange

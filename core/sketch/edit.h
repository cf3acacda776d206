// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/sketch/sketch.h"

namespace matwright {

struct SketchTexts {
    std::string name;
    std::string note;
    friend bool operator==(const SketchTexts&, const SketchTexts&) = default;
};

// A change as data: for each touched piece what it is afterwards (nothing = removed), and what
// else changes. What is not mentioned stays.
struct Edit {
    std::map<PieceId, std::optional<Piece>> pieces;
    std::optional<std::vector<PieceId>> order;  // the whole order afterwards
    std::optional<PageSetup> page;
    std::optional<SketchTexts> texts;

    bool isEmpty() const { return pieces.empty() && !order && !page && !texts; }
    friend bool operator==(const Edit&, const Edit&) = default;
};

// Applies the whole edit or, on error, nothing. Returns the inverse: apply(apply-result) gives back
// an equal sketch. Where `order` is not given, removed ids leave the order and new ids go on top in
// id order. Only what the edit touches is checked anew. Error: BadEdit, with the rule broken.
Result<Edit> apply(Sketch& sketch, const Edit& edit);

// One edit with the effect of `first` then `second`, where it can be told without the sketch: it
// always can for edits that apply() returned, and where one of the two brings an order or `second`
// neither adds nor removes pieces. Otherwise new pieces go on top in id order, whichever edit they
// come from.
Edit merged(Edit first, const Edit& second);

// Builders. They need no checking of their own: apply() does that.
Edit addPieces(const Sketch& sketch, std::span<const Piece> pieces);  // new ids, on top in order
Edit removePieces(const Sketch& sketch, std::span<const PieceId> ids);
Edit changePiece(PieceId id, Piece after);
Edit changePage(const PageSetup& after);

}  // namespace matwright

// SPDX-License-Identifier: MIT
#include "core/sketch/edit.h"

#include <algorithm>
#include <set>
#include <utility>

#include "core/sketch/soundness.h"

namespace matwright {

namespace {

Error badEdit(const Error& fault) {
    return {ErrorCode::BadEdit, fault.sentence, fault.where};
}

bool isOrderOf(const std::vector<PieceId>& order, const std::map<PieceId, Piece>& pieces) {
    if (order.size() != pieces.size()) {
        return false;
    }
    const std::set<PieceId> ids(order.begin(), order.end());
    return ids.size() == order.size() &&
           std::ranges::all_of(ids, [&](PieceId id) { return pieces.contains(id); });
}

// Everything that can be refused is refused here, before the sketch is touched.
std::optional<Error> findFaultOf(const Sketch& sketch, const Edit& edit) {
    if (edit.page) {
        if (auto fault = findFault(*edit.page)) {
            return fault;
        }
    }
    if (edit.texts &&
        (!isValidText(edit.texts->name, false) || !isValidText(edit.texts->note, true))) {
        return Error{ErrorCode::Malformed,
                     "The sketch's name or note is too long or has characters that cannot be "
                     "saved; shorten it or retype it.",
                     ""};
    }
    std::size_t count = sketch.pieces.size();
    for (const auto& [id, after] : edit.pieces) {
        if (id.value == 0 || id > maxPieceId) {
            return Error{ErrorCode::Malformed, "A piece needs an id from 1 to 1e9.", ""};
        }
        const bool existed = sketch.pieces.contains(id);
        if (after) {
            if (auto fault = findFault(*after)) {
                return fault;
            }
            count += existed ? 0 : 1;
        } else {
            count -= existed ? 1 : 0;
        }
    }
    if (count > maxPieces) {
        return Error{ErrorCode::Malformed, "A sketch holds at most 20,000 pieces.", ""};
    }
    return std::nullopt;
}

// Whether applying `edit` adds or removes ids, so that the order changes even if not given.
bool changesIds(const Sketch& sketch, const Edit& edit) {
    return std::ranges::any_of(edit.pieces, [&](const auto& entry) {
        return entry.second.has_value() != sketch.pieces.contains(entry.first);
    });
}

// The order after pieces left it, or were added on top in id order.
std::vector<PieceId> followed(std::vector<PieceId> order,
                              const std::map<PieceId, std::optional<Piece>>& pieces) {
    const std::set<PieceId> known(order.begin(), order.end());
    std::erase_if(order, [&](PieceId id) {
        const auto it = pieces.find(id);
        return it != pieces.end() && !it->second;
    });
    for (const auto& [id, after] : pieces) {
        if (after && !known.contains(id)) {
            order.push_back(id);
        }
    }
    return order;
}

// Puts `after` (a piece, or nothing) in place and returns what was there.
std::optional<Piece> exchanged(std::map<PieceId, Piece>& pieces, PieceId id,
                               const std::optional<Piece>& after) {
    std::optional<Piece> before;
    const auto it = pieces.find(id);
    if (it != pieces.end()) {
        before = std::move(it->second);
    }
    if (after) {
        pieces.insert_or_assign(id, *after);
    } else if (it != pieces.end()) {
        pieces.erase(it);
    }
    return before;
}

}  // namespace

Result<Edit> apply(Sketch& sketch, const Edit& edit) {
    if (auto fault = findFaultOf(sketch, edit)) {
        return std::unexpected(badEdit(*fault));
    }
    const bool orderChanges = edit.order.has_value() || changesIds(sketch, edit);
    std::vector<PieceId> order;
    if (orderChanges) {
        order = edit.order ? *edit.order : followed(sketch.order, edit.pieces);
    }

    Edit inverse;
    for (const auto& [id, after] : edit.pieces) {
        inverse.pieces.emplace(id, exchanged(sketch.pieces, id, after));
    }
    if (orderChanges) {
        if (!isOrderOf(order, sketch.pieces)) {
            for (const auto& [id, before] : inverse.pieces) {
                exchanged(sketch.pieces, id, before);
            }
            return std::unexpected(
                Error{ErrorCode::BadEdit, "The order must list every piece exactly once.", ""});
        }
        inverse.order = std::exchange(sketch.order, std::move(order));
    }
    if (edit.page) {
        inverse.page = std::exchange(sketch.page, *edit.page);
    }
    if (edit.texts) {
        inverse.texts = SketchTexts{std::exchange(sketch.name, edit.texts->name),
                                    std::exchange(sketch.note, edit.texts->note)};
    }
    return inverse;
}

Edit merged(Edit first, const Edit& second) {
    for (const auto& [id, after] : second.pieces) {
        first.pieces.insert_or_assign(id, after);
    }
    if (second.order) {
        first.order = second.order;
    } else if (first.order) {
        first.order = followed(std::move(*first.order), second.pieces);
    }
    if (second.page) {
        first.page = second.page;
    }
    if (second.texts) {
        first.texts = second.texts;
    }
    return first;
}

Edit addPieces(const Sketch& sketch, std::span<const Piece> pieces) {
    Edit edit;
    PieceId id = nextId(sketch);
    if (id.value + std::uint64_t{pieces.size()} > maxPieceId.value + std::uint64_t{1}) {
        id = PieceId{1};  // not enough room above: fill the gaps
    }
    for (const Piece& piece : pieces) {
        while (sketch.pieces.contains(id)) {
            ++id.value;
        }
        edit.pieces.emplace(id, piece);
        ++id.value;
    }
    return edit;
}

Edit removePieces(const Sketch& sketch, std::span<const PieceId> ids) {
    Edit edit;
    for (const PieceId id : ids) {
        if (sketch.pieces.contains(id)) {
            edit.pieces.emplace(id, std::nullopt);
        }
    }
    return edit;
}

Edit changePiece(PieceId id, Piece after) {
    Edit edit;
    edit.pieces.emplace(id, std::move(after));
    return edit;
}

Edit changePage(const PageSetup& after) {
    Edit edit;
    edit.page = after;
    return edit;
}

}  // namespace matwright

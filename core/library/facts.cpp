// SPDX-License-Identifier: MIT
#include "core/library/facts.h"

#include <algorithm>
#include <utility>

namespace matwright {

namespace {

// Whether the turn brings what is wide to stand: nearer to a quarter turn than to none or a half.
bool standsOnItsSide(Angle rotation) {
    constexpr std::int32_t halfTurn = 180'000;
    constexpr std::int32_t eighthTurn = 45'000;
    const std::int32_t way = rotation.toMillidegrees() % halfTurn;
    return way > eighthTurn && way < halfTurn - eighthTurn;
}

void countPhoto(SketchFacts& facts, const Piece& photo) {
    const Size trim = standsOnItsSide(photo.rotation) ? photo.size.turned() : photo.size;
    ++facts.photos;
    if (trim.width == trim.height) {
        ++facts.squarePhotos;
    } else {
        ++(trim.isUpright() ? facts.uprightPhotos : facts.lyingPhotos);
    }
    const Size print = shortSideFirst(photo.printSize.value_or(photo.size));
    const auto need =
        std::ranges::lower_bound(facts.prints, print, isSmallerPrint, &PrintNeed::size);
    if (need != facts.prints.end() && need->size == print) {
        ++need->count;
    } else {
        facts.prints.insert(need, {print, 1});
    }
}

}  // namespace

Size shortSideFirst(Size size) {
    return size.width > size.height ? size.turned() : size;
}

bool isSmallerPrint(Size a, Size b) {
    const auto rank = [](Size size) {
        return std::pair(size.width.ticks() * size.height.ticks(),
                         std::min(size.width, size.height));
    };
    return rank(a) < rank(b);
}

SketchFacts factsOf(const Sketch& sketch) {
    SketchFacts facts;
    facts.name = sketch.name;
    facts.note = sketch.note;
    facts.pageSize = sketch.page.size;
    facts.doublePage = sketch.page.doublePage;
    for (const auto& [id, piece] : sketch.pieces) {
        if (piece.kind == PieceKind::PhotoSlot) {
            countPhoto(facts, piece);
        }
        facts.titles += piece.kind == PieceKind::Title ? 1 : 0;
        facts.journalings += piece.kind == PieceKind::Journaling ? 1 : 0;
    }
    return facts;
}

}  // namespace matwright

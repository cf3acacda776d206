// SPDX-License-Identifier: MIT
#include "core/carry/judgement.h"

#include <algorithm>
#include <cmath>

#include "core/sketch/soundness.h"

namespace matwright::carry {

namespace {

double relationCost(RelationKind kind) {
    switch (kind) {
        case RelationKind::OnPageEdge:
        case RelationKind::OnMargin:
            return 4;
        case RelationKind::Gutter:
        case RelationKind::Flush:
        case RelationKind::InLine:
            return 3;
        case RelationKind::CentredOnPage:
        case RelationKind::CentredInMargins:
        case RelationKind::CentredOnFold:
            return 2;
        case RelationKind::EqualGaps:
        case RelationKind::CentredTogether:
            return 1;
    }
    return 1;
}

// Photos and words inside the margins of a page, or of both pages together.
bool isInsideMargins(const Footprint& piece, const PageSetup& setup) {
    const std::vector<Rect> areas = insideMargins(setup);
    return std::ranges::any_of(areas,
                               [&](const Rect& area) { return area.contains(piece.outer); }) ||
           areas.front().united(areas.back()).contains(piece.outer);
}

double squaredLog(double ratioOfTwo) {
    const double l = std::log(ratioOfTwo);
    return l * l;
}

// How far the photo is from the same photo at scale, and how much of its print is cut away.
double photoCost(const Piece& before, const Piece& after, double scale) {
    const double wasted = 1 - squareInches(after.size) / squareInches(*after.printSize);
    const double wastedBefore = 1 - squareInches(before.size) / squareInches(*before.printSize);
    const double shape =
        ratio(after.size.height, after.size.width) / ratio(before.size.height, before.size.width);
    const double changed = after.printSize == before.printSize ? 0 : 0.1;
    const double misfit = after.printSize->contains(after.size) ? 0 : 20;
    return 1.5 *
               squaredLog(squareInches(after.size) / (squareInches(before.size) * scale * scale)) +
           2 * squaredLog(shape) + 0.7 * std::max(0.0, wasted - wastedBefore) + changed + misfit;
}

double otherCost(const Piece& before, const Piece& after, double scale) {
    const double shares = squareInches(after.size) / (squareInches(before.size) * scale * scale);
    const bool text = before.kind == PieceKind::Title || before.kind == PieceKind::Journaling;
    // More room for words does no harm.
    return shares >= 1 ? 0.1 * squaredLog(shares) : (text ? 0.6 : 0.3) * squaredLog(shares);
}

}  // namespace

bool isNewlyOverMargin(const Source& source, std::size_t piece, const Footprint& after) {
    return after.piece->kind != PieceKind::Embellishment && !isPaper(*after.piece) &&
           isInsideMargins(source.pieces[piece], source.sketch.page) &&
           !isInsideMargins(after, source.to);
}

bool mustStayClear(const Piece& below, const Piece& above) {
    const auto counts = [](const Piece& piece) {
        return piece.kind == PieceKind::PhotoSlot || piece.kind == PieceKind::Title ||
               piece.kind == PieceKind::Journaling;
    };
    return counts(below) && (counts(above) || isPaper(above));
}

std::size_t newOverlaps(const Source& source, const std::vector<Footprint>& after) {
    std::size_t found = 0;
    for (std::size_t below = 0; below < after.size(); ++below) {
        for (std::size_t above = below + 1; above < after.size(); ++above) {
            const bool overlap =
                after[below].outer.interiorIntersects(after[above].outer) &&
                !source.pieces[below].outer.interiorIntersects(source.pieces[above].outer);
            found += overlap && mustStayClear(*after[below].piece, *after[above].piece) ? 1 : 0;
        }
    }
    return found;
}

void judge(const Source& source, Attempt& attempt) {
    const std::vector<Footprint> after = footprints(attempt.sketch);
    attempt.lost.clear();
    attempt.cost = 0;
    for (std::size_t r = 0; r < source.relations.size(); ++r) {
        if (!holds(source.relations[r], after, attempt.sketch.page)) {
            attempt.lost.push_back(r);
            attempt.cost += relationCost(source.relations[r].kind);
        }
    }
    const Rect room = surface(attempt.sketch.page);
    for (std::size_t i = 0; i < after.size(); ++i) {
        const Piece& before = *source.pieces[i].piece;
        const Piece& now = *after[i].piece;
        if (findFault(now)) {
            // Squeezed to nothing, say.
            attempt.cost += 1000;
            continue;
        }
        attempt.cost += now.printSize ? photoCost(before, now, source.scale)
                                      : otherCost(before, now, source.scale);
        const bool left = surface(source.sketch.page).contains(source.pieces[i].outer) &&
                          !room.contains(after[i].outer);
        attempt.cost += left ? 100 : 0;
        attempt.cost += isNewlyOverMargin(source, i, after[i]) ? 3 : 0;
    }
    attempt.cost += 20 * static_cast<double>(newOverlaps(source, after));
}

}  // namespace matwright::carry

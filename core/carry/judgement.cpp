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

double area(Size size) {
    return size.width.toInches() * size.height.toInches();
}

double squaredLog(double ratioOfTwo) {
    const double l = std::log(ratioOfTwo);
    return l * l;
}

// How far the photo is from the same photo at scale, and how much of its print is cut away.
double photoCost(const Piece& before, const Piece& after, double scale) {
    const double wasted = 1 - area(after.size) / area(*after.printSize);
    const double wastedBefore = 1 - area(before.size) / area(*before.printSize);
    const double shape =
        ratio(after.size.height, after.size.width) / ratio(before.size.height, before.size.width);
    const double changed = after.printSize == before.printSize ? 0 : 0.1;
    const double misfit = after.printSize->contains(after.size) ? 0 : 20;
    return 1.5 * squaredLog(area(after.size) / (area(before.size) * scale * scale)) +
           2 * squaredLog(shape) + 0.7 * std::max(0.0, wasted - wastedBefore) + changed + misfit;
}

double otherCost(const Piece& before, const Piece& after, double scale) {
    const double shares = area(after.size) / (area(before.size) * scale * scale);
    const bool text = before.kind == PieceKind::Title || before.kind == PieceKind::Journaling;
    // More room for words does no harm.
    return shares >= 1 ? 0.1 * squaredLog(shares) : (text ? 0.6 : 0.3) * squaredLog(shares);
}

}  // namespace

std::vector<std::pair<std::size_t, std::size_t>> newPhotoOverlaps(
    const Source& source, const std::vector<Footprint>& after) {
    std::vector<std::pair<std::size_t, std::size_t>> found;
    for (std::size_t i = 0; i < after.size(); ++i) {
        for (std::size_t j = i + 1; j < after.size(); ++j) {
            if (after[i].piece->printSize && after[j].piece->printSize &&
                after[i].outer.interiorIntersects(after[j].outer) &&
                !source.pieces[i].outer.interiorIntersects(source.pieces[j].outer)) {
                found.emplace_back(i, j);
            }
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
        attempt.cost += now.printSize ? photoCost(before, now, source.scale)
                                      : otherCost(before, now, source.scale);
        const bool left = surface(source.sketch.page).contains(source.pieces[i].outer) &&
                          !room.contains(after[i].outer);
        attempt.cost += left ? 100 : 0;
        attempt.cost += findFault(now) ? 1000 : 0;
    }
    attempt.cost += 20 * static_cast<double>(newPhotoOverlaps(source, after).size());
}

}  // namespace matwright::carry

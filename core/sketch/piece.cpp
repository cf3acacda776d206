// SPDX-License-Identifier: MIT
#include "core/sketch/piece.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

#include "core/measure/length_text.h"

namespace matwright {

std::string_view kindName(PieceKind kind) {
    switch (kind) {
        case PieceKind::PhotoSlot:
            return "photo slot";
        case PieceKind::Strip:
            return "strip";
        case PieceKind::Block:
            return "block";
        case PieceKind::Title:
            return "title";
        case PieceKind::Journaling:
            return "journaling";
        case PieceKind::Embellishment:
            return "embellishment";
    }
    return "piece";
}

Rect trimBox(const Piece& piece) {
    return Rect::at(piece.place, piece.size);
}

Rect matBox(const Piece& piece, std::size_t index) {
    assert(index < piece.mats.size());
    Rect box = trimBox(piece);
    for (std::size_t i = 0; i <= index; ++i) {
        const Mat& mat = piece.mats[i];
        box = box.expanded(mat.border);
        box.y.high += mat.bottomBorder.value_or(mat.border) - mat.border;
    }
    return box;
}

Rect outermostBox(const Piece& piece) {
    return piece.mats.empty() ? trimBox(piece) : matBox(piece, piece.mats.size() - 1);
}

Rect printBox(const Piece& piece) {
    if (!piece.printSize) {
        return trimBox(piece);
    }
    const Length left = (piece.printSize->width - piece.size.width).halfRoundedDown();
    const Length top = (piece.printSize->height - piece.size.height).halfRoundedDown();
    return Rect::at(piece.place - Point{left, top}, *piece.printSize);
}

Rect turnedBounds(const Piece& piece, const Rect& box) {
    if (piece.rotation.isZero()) {
        return box;
    }
    const double c = piece.rotation.cosine();
    const double s = piece.rotation.sine();
    // Twice the centre is exact in ticks, its half is exact in a double.
    const Rect trim = trimBox(piece);
    const double cx = static_cast<double>((trim.left() + trim.right()).ticks()) / 2;
    const double cy = static_cast<double>((trim.top() + trim.bottom()).ticks()) / 2;
    constexpr double infinite = std::numeric_limits<double>::infinity();
    double minX = infinite, minY = infinite, maxX = -infinite, maxY = -infinite;
    for (const Length x : {box.left(), box.right()}) {
        for (const Length y : {box.top(), box.bottom()}) {
            const double dx = static_cast<double>(x.ticks()) - cx;
            const double dy = static_cast<double>(y.ticks()) - cy;
            const double px = cx + dx * c - dy * s;
            const double py = cy + dx * s + dy * c;
            minX = std::min(minX, px);
            maxX = std::max(maxX, px);
            minY = std::min(minY, py);
            maxY = std::max(maxY, py);
        }
    }
    const auto down = [](double v) { return Length::fromTicks(std::llround(std::floor(v))); };
    const auto up = [](double v) { return Length::fromTicks(std::llround(std::ceil(v))); };
    return {{down(minX), up(maxX)}, {down(minY), up(maxY)}};
}

Rect trimBounds(const Piece& piece) {
    return turnedBounds(piece, trimBox(piece));
}

Rect outermostBounds(const Piece& piece) {
    return turnedBounds(piece, outermostBox(piece));
}

Piece withBox(Piece piece, const Rect& box) {
    const Size before = piece.size;
    piece.place = box.topLeft();
    piece.size = box.size();
    if (auto* polygon = std::get_if<PolygonShape>(&piece.shape); polygon && before != piece.size) {
        for (Point& corner : polygon->corners) {
            corner.x = corner.x.scaledRounded(piece.size.width.ticks(), before.width.ticks());
            corner.y = corner.y.scaledRounded(piece.size.height.ticks(), before.height.ticks());
        }
    }
    return piece;
}

std::string displayName(const Piece& piece) {
    if (!piece.name.empty()) {
        return piece.name;
    }
    return std::string(kindName(piece.kind)) + " " +
           naturalSizeText(piece.printSize.value_or(piece.size));
}

}  // namespace matwright

// SPDX-License-Identifier: MIT
#include "app/panels/piece_changes.h"

#include <algorithm>
#include <ranges>

#include "core/measure/catalogue.h"
#include "core/measure/length_text.h"

namespace matwright::app {

namespace {

Size printLying(Size print, bool upright) {
    return print.isUpright() == upright ? print : print.turned();
}

bool hasPlaceRoom(const Piece& piece) {
    return piece.kind == PieceKind::PhotoSlot && piece.mats.size() < maxMats;
}

}  // namespace

Piece withTrim(Piece piece, Size trim) {
    if (!trim.isPositive()) {
        return piece;
    }
    const Rect box = Rect::at(piece.place, trim);
    piece = withBox(std::move(piece), box);
    if (piece.printSize && !piece.printSize->contains(trim)) {
        piece.printSize = printLying(printSizeFor(trim), trim.isUpright());
    }
    return piece;
}

Piece withWidth(Piece piece, Length width, bool keepRatio) {
    const Size old = piece.size;
    const Length height =
        keepRatio ? old.height.scaledRounded(width.ticks(), old.width.ticks()) : old.height;
    return withTrim(std::move(piece), {width, height});
}

Piece withHeight(Piece piece, Length height, bool keepRatio) {
    const Size old = piece.size;
    const Length width =
        keepRatio ? old.width.scaledRounded(height.ticks(), old.height.ticks()) : old.width;
    return withTrim(std::move(piece), {width, height});
}

Piece withPrint(Piece piece, Size print) {
    if (piece.kind != PieceKind::PhotoSlot || piece.printSize == print) {
        return piece;
    }
    const bool untrimmed = !piece.printSize || *piece.printSize == piece.size;
    piece.printSize = print;
    return untrimmed || !print.contains(piece.size) ? trimmedToPrint(std::move(piece)) : piece;
}

Piece trimmedToPrint(Piece piece) {
    if (!piece.printSize) {
        return piece;
    }
    const Rect box = Rect::at(piece.place, *piece.printSize);
    return withBox(std::move(piece), box);
}

Piece withOneMoreMat(Piece piece) {
    if (hasPlaceRoom(piece)) {
        piece.mats.push_back(Mat{usualBorder, std::nullopt, {}});
    }
    return piece;
}

std::vector<Size> commonTrims(Size print) {
    std::vector<Size> trims{print};
    const auto add = [&](Size size) {
        if (print.contains(size) && std::ranges::find(trims, size) == trims.end()) {
            trims.push_back(size);
        }
    };
    const Length side = std::min(print.width, print.height);
    add({side, side});
    const auto catalogue = printSizes();
    for (const NamedSize& known : std::views::reverse(catalogue)) {
        add(printLying(known.size, print.isUpright()));
        add(printLying(known.size, !print.isUpright()));
    }
    return trims;
}

ShapeKind shapeKindOf(const Shape& shape) {
    return static_cast<ShapeKind>(shape.index());
}

Shape beginningShape(ShapeKind kind, Size box) {
    switch (kind) {
        case ShapeKind::Rectangle:
            return RectangleShape{};
        case ShapeKind::Rounded: {
            const Length quarter = std::min(box.width, box.height).scaledRounded(1, 4);
            return RoundedRectangleShape{
                std::clamp(quarter, Length::fromTicks(1), Length::inches(0, 1, 2))};
        }
        case ShapeKind::Oval:
            return OvalShape{};
        case ShapeKind::Polygon:
            break;
    }
    const Length left = box.width.scaledRounded(1, 4);
    const Length right = box.width - left;
    const Length middle = box.height.scaledRounded(1, 2);
    const Length zero;
    return PolygonShape{{{left, zero},
                         {right, zero},
                         {box.width, middle},
                         {right, box.height},
                         {left, box.height},
                         {zero, middle}}};
}

QString printName(Size print) {
    const NamedSize* known = printSizeOf(print);
    if (known && known->id.ends_with("cm")) {
        const auto cm = [](Length side) { return QString::number(side.toMillimetres() / 10); };
        return QObject::tr("%1 × %2 cm").arg(cm(print.width), cm(print.height));
    }
    return QString::fromStdString(naturalSizeText(print));
}

Result<void> changeSelected(Session& session, const QString& label, int gesture,
                            const PieceChange& change, const PhotoEdit& along) {
    Edit edit;
    for (const PieceId id : session.selection()) {
        const Piece& before = *matwright::find(session.sketch(), id);
        Piece after = before;
        change(after);
        if (after != before) {
            edit.pieces.emplace(id, std::move(after));
        }
    }
    return session.perform({edit, edit.isEmpty() ? PhotoEdit() : along}, label, gesture);
}

}  // namespace matwright::app

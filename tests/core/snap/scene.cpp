// SPDX-License-Identifier: MIT
#include "tests/core/snap/scene.h"

namespace matwright::test {

namespace {

Piece& addPiece(Sketch& sketch, const Rect& trim) {
    const PieceId id = nextId(sketch);
    sketch.order.push_back(id);
    Piece& piece = sketch.pieces[id];
    piece.place = trim.topLeft();
    piece.size = trim.size();
    return piece;
}

}  // namespace

Rect box(std::int64_t left, std::int64_t top, std::int64_t width, std::int64_t height) {
    return Rect::at({in(left), in(top)}, {in(width), in(height)});
}

SnapBox bare(const Rect& trim) {
    return {trim, trim};
}

SnapBox matted(const Rect& trim, Length border) {
    return {trim, trim.expanded(border)};
}

Sketch sceneOf(const std::vector<Rect>& blocks) {
    Sketch sketch = blankSketch();
    for (const Rect& block : blocks) {
        addPiece(sketch, block);
    }
    return sketch;
}

Sketch doublePage(Length foldGap) {
    Sketch sketch = blankSketch();
    sketch.page.doublePage = true;
    sketch.page.foldGap = foldGap;
    return sketch;
}

void addMattedSlot(Sketch& sketch, const Rect& trim, Length border) {
    Piece& piece = addPiece(sketch, trim);
    piece.kind = PieceKind::PhotoSlot;
    piece.printSize = piece.size;
    piece.mats = {Mat{border, {}, ""}};
}

SnapSettings nothing() {
    SnapSettings settings;
    settings.pageEdges = settings.margins = settings.pageCentres = settings.thirds = false;
    settings.grid = settings.neighbourEdges = settings.neighbourCentres = false;
    settings.gutter = settings.equalGaps = settings.matEdges = false;
    return settings;
}

}  // namespace matwright::test

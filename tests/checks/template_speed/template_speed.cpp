// SPDX-License-Identifier: MIT
// Prints how long the template SVG of a 40-piece page takes: the median of several runs, and how
// much of it is writing the SVG. A figure to quote, with no limit to pass.
#include <algorithm>
#include <chrono>
#include <cstdio>

#include "core/drawing/svg.h"
#include "core/sketch/edit.h"
#include "core/template/template.h"

namespace {

using namespace matwright;
using Clock = std::chrono::steady_clock;

double millisecondsSince(Clock::time_point start) {
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

// Five rows of eight matted 1 x 1 1/2 prints; every fifth is turned over its neighbour.
Sketch fortyPieces() {
    Sketch sketch = blankSketch();
    sketch.name = "Forty prints";
    std::vector<Piece> pieces;
    for (int i = 0; i < 40; ++i) {
        Piece piece;
        piece.kind = PieceKind::PhotoSlot;
        piece.place = {Length::inches(0, 3, 4) + (i % 8) * Length::inches(1, 3, 8),
                       Length::inches(0, 3, 4) + (i / 8) * Length::inches(2, 1, 8)};
        piece.size = {Length::inches(1), Length::inches(1, 1, 2)};
        piece.printSize = piece.size;
        piece.mats = {{Length::inches(0, 1, 16), std::nullopt, ""}};
        piece.rotation = Angle::degrees(i % 5 == 0 ? 20 : 0);
        pieces.push_back(piece);
    }
    (void)apply(sketch, addPieces(sketch, pieces));
    return sketch;
}

}  // namespace

int main() {
    const Sketch sketch = fortyPieces();
    std::vector<double> whole;
    std::vector<double> writing;
    std::size_t bytes = 0;
    for (int run = 0; run < 9; ++run) {
        const auto start = Clock::now();
        const Drawing drawing = templateDrawing(sketch, {});
        const auto drawn = Clock::now();
        bytes = svgText(drawing).size();
        writing.push_back(millisecondsSince(drawn));
        whole.push_back(millisecondsSince(start));
    }
    std::ranges::sort(whole);
    std::ranges::sort(writing);
    std::printf(
        "template SVG of a %zu-piece page: %.1f ms (median of 9, %.1f to %.1f), "
        "%.1f ms of it writing %zu bytes\n",
        sketch.pieces.size(), whole[4], whole.front(), whole.back(), writing[4], bytes);
    return sketch.pieces.size() == 40 && bytes > 0 ? 0 : 1;
}

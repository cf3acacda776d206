// SPDX-License-Identifier: MIT
#pragma once

#include <QPalette>
#include <QRegion>
#include <functional>

#include "app/canvas/page_dress.h"
#include "app/canvas/piece_label.h"
#include "app/canvas/viewport.h"
#include "core/sketch/sketch.h"

class QPainter;

namespace matwright::app {

// Paints the still picture of a sketch: surroundings, paper, margin lines and pieces. Works in view
// coordinates; only pieces that touch `area` are drawn. The caller clips.

// The colour around the page, from the palette.
QColor surroundingsColour(const QPalette& palette);

void paintPaper(QPainter& painter, const PageSetup& setup, const Viewport& viewport,
                const QPalette& palette, const QRectF& area);

using PieceFilter = std::function<bool(PieceId)>;
// Bottom to top; pieces the filter refuses are left out.
void paintPieces(QPainter& painter, const Sketch& sketch, const Viewport& viewport,
                 const LabelStyle& labels, const QRegion& area, const PieceFilter& wanted,
                 const PageDress& dress = {});
// `number`: what its label calls it.
void paintPiece(QPainter& painter, const Piece& piece, std::size_t number, const Viewport& viewport,
                const LabelStyle& labels);

// The piece with its photo and papers, and without a label: those would lie on the picture.
void paintDressed(QPainter& painter, PieceId id, const Piece& piece, const Placement* placement,
                  const Viewport& viewport, const PageDress& dress);

// Everything that painting the piece may touch in the view, anti-aliased edges included.
QRect paintedRect(const Piece& piece, const Viewport& viewport);
// The same from its outermost bounds.
QRect paintedRect(const Rect& reach, const Viewport& viewport);

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>
#include <QFont>
#include <QRectF>
#include <QStringList>
#include <QTransform>
#include <optional>

#include "app/canvas/viewport.h"
#include "core/measure/length_text.h"
#include "core/sketch/piece.h"

class QPainter;

namespace matwright::app {

// How the words inside the pieces are set. They keep one size on the screen at every zoom.
struct LabelStyle {
    QFont font;
    Scale scale = Scale::SixteenthInch;
    friend bool operator==(const LabelStyle&, const LabelStyle&) = default;
};
// The widget's own font, of at least 12 pixels.
LabelStyle labelStyleFor(QFont font, Scale scale);

// What one piece says on the screen: its number in the order of laying down, its name where it has
// one, and its size (a photo slot's print size).
struct PieceLabel {
    QStringList lines;
    // Stands on the centre of the piece, turned with it; but never steeper than 45 degrees, so that
    // the words of a piece on its side, or on its head, can still be read.
    QTransform frame;
    QRectF rect;  // in the frame, logical pixels: the lines with a little room around
    bool isCentred = false;
    QColor backing;  // the piece's fill, so that ruled lines and marks do not strike the words out
    QFont font;

    // The label where there is room for one: in the lower left corner of a rectangle, in the lower
    // half of any other shape. What does not fit is left out: first the name is shortened, then it
    // goes, then the number, then all but the number.
    static std::optional<PieceLabel> of(const Piece& piece, std::size_t number,
                                        const Viewport& viewport, const LabelStyle& style);
    // View coordinates.
    void paint(QPainter& painter) const;
};

// At least 4.5:1 on the fills and the marks of every kind of piece.
inline constexpr QColor labelInk(34, 40, 46);

}  // namespace matwright::app

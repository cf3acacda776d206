// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <QPainterPath>

#include "core/drawing/drawing.h"

class QPainter;

namespace matwright::app {

// The one painter for screen, PDF and printer. Strokes have butt ends and mitred joins (limit 4),
// fills are even-odd, as in the SVG.
//
// Precondition of the painting functions: the painter's transform makes one unit one tick and the
// drawing's top left corner the origin. The painter comes back as it was. A QGuiApplication must
// exist (for text).
void paintDrawing(QPainter& painter, const Drawing& drawing);
void paintItem(QPainter& painter, const DrawingItem& item);

// The same for looking at a drawing made smaller: no line is thinner than `leastWidth` of the
// painter's device-independent pixels, and dashes are lengthened until they can be told apart.
void paintPreview(QPainter& painter, const Drawing& drawing, double leastWidth);

// In ticks; curves stay curves.
QPainterPath toPainterPath(const Path& path);
// All of them as one even-odd path, in ticks.
QPainterPath toPainterPath(const std::vector<Path>& paths);

// The drawing on white at `ppi` (positive) pixels per inch, each side rounded up to a whole pixel;
// the image carries that density. A null image where it would have more than maxImagePixels.
inline constexpr qint64 maxImagePixels = 200'000'000;
QImage imageOf(const Drawing& drawing, double ppi);

// The width of one line of text, in ticks, as it is painted: the same at every resolution.
double paintedTextWidth(const std::string& text, Length height, bool bold);

}  // namespace matwright::app

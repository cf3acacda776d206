// SPDX-License-Identifier: MIT
#pragma once

#include <QFont>
#include <QPainter>
#include <QString>

namespace matwright::app {

// Word: white on dark, what a snap or a readout says. Figure: dark on white, a measured gap.
enum class ChipKind { Word, Figure };

// A drag step measures and paints several chips whose figures are new each time, and shaping text
// is dear: letters are looked up once for a font and then set one beside the other. Text with a
// letter that the font does not have is set in the usual way.
QSize chipSize(const QString& text, ChipKind kind, const QFont& font);
// Fills `rect`, which is as large as chipSize(), at whole pixels.
void paintChip(QPainter& painter, const QRectF& rect, const QString& text, ChipKind kind,
               const QFont& font);

}  // namespace matwright::app

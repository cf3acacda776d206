// SPDX-License-Identifier: MIT
#pragma once

#include <QFont>
#include <QPixmap>
#include <QString>

namespace matwright::app {

// Word: white on dark, what a snap or a readout says. Figure: dark on white, a measured gap.
enum class ChipKind { Word, Figure };

// Measuring and setting text is dear in a drag step, and the same few figures come back all the
// time: both are remembered, for one font at a time.
QSize chipSize(const QString& text, ChipKind kind, const QFont& font);
QPixmap chipPicture(const QString& text, ChipKind kind, const QFont& font, double devicePixelRatio);

}  // namespace matwright::app

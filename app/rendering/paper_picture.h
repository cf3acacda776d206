// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QImage>
#include <QString>

#include "core/drawing/drawing.h"

namespace matwright::app {

inline constexpr qint64 maxPaperPictureBytes = 200LL << 20;
inline constexpr qint64 maxPaperPicturePixels = 120'000'000;

// A picture of a paper for looking at, upright as its metadata say, its longer side at most
// `longSide` pixels. Null where there is none that can be shown: no plain file, no picture, or one
// above those limits. Any thread may call; a scan of a whole sheet takes a second or more, so
// windows call from the background.
QImage readPaperPicture(const QString& path, int longSide);
// The same of what a file holds.
QImage paperPictureIn(QByteArray bytes, int longSide);

// The colour that stands for a picture that is not shown; of one that is not null.
Colour meanColour(const QImage& picture);

}  // namespace matwright::app

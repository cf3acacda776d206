// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <QPixmap>
#include <QString>

#include "core/papers/paper_on_hand.h"

namespace matwright::app {

QString kindWord(PaperKind kind);           // "whole sheet", "scrap"
QString sidesWord(PaperSides sides);        // "one side", "both sides"
QString patternWord(PaperPattern pattern);  // "any way up", "this way up"

// How a paper looks, with an edge around it: its picture, or its colour where that is null. `side`
// in device-independent pixels.
QPixmap paperSwatch(Colour colour, const QImage& picture, QSize side, double pixelRatio);

}  // namespace matwright::app

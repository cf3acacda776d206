// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>
#include <QHash>
#include <QImage>
#include <QPixmap>
#include <QString>

#include "core/papers/paper_on_hand.h"

namespace matwright::app {

QString kindWord(PaperKind kind);           // "whole sheet", "scrap"
QString sidesWord(PaperSides sides);        // "one side", "both sides"
QString patternWord(PaperPattern pattern);  // "any way up", "this way up"

QColor toColor(Colour colour);
Colour toColour(const QColor& colour);

// Small pictures of papers: a picture of the paper where there is one that can be read, else its
// colour. Each picture file is read once, made small at once, and not at all above 200 MB.
class Swatches {
  public:
    // `side` in device-independent pixels.
    QPixmap swatch(const PaperOnHand& paper, QSize side, double pixelRatio);

  private:
    QHash<QString, QImage> m_pictures;
};

}  // namespace matwright::app

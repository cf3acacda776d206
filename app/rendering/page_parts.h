// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>

#include "core/pagepicture/page_picture.h"

class QPainter;

namespace matwright::app {

// Where the painter of a finished page gets its pictures.
class PartPictures {
  public:
    virtual ~PartPictures() = default;

    // What shows in the window of this slot, and nothing else of the photo: upright, toned, of the
    // window's ratio in about as many pixels as `pixelsPerTick` asks for. Null where there is none
    // (yet).
    virtual QImage windowPicture(PieceId slot, const PhotoFill& fill, double pixelsPerTick) = 0;
    // The picture of a paper, of any size; null where it is out of reach (or not read yet).
    virtual QImage paperPicture(const PaperLook& look) = 0;

  protected:
    PartPictures() = default;
    PartPictures(const PartPictures&) = default;
    PartPictures& operator=(const PartPictures&) = default;
};

// The one painter of the finished page, for the canvas and for pictures of it. As paintDrawing():
// the painter's transform makes one unit one tick; `pixelsPerTick` says how many of the device's
// pixels that is. Photos that are not there are grey.
void paintPart(QPainter& painter, const PagePiece& part, PartPictures& pictures,
               double pixelsPerTick);

}  // namespace matwright::app

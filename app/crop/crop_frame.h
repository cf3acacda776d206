// SPDX-License-Identifier: MIT
#pragma once

#include <QRectF>
#include <QSizeF>
#include <QTransform>

#include "core/crop/crop.h"

namespace matwright::app {

// What is cropped: a photo of `upright` pixels into a slot's print and trim, as they lie.
struct CropSubject {
    PixelSize upright;
    Size print;
    Size trim;
    friend bool operator==(const CropSubject&, const CropSubject&) = default;
};

// Where the frame stands in a view, as a value: the print as large as the view allows with room for
// the photo around it. All in logical pixels.
struct CropFrame {
    QRectF print;   // the paper that is printed
    QRectF trim;    // what is left of it after cutting
    QRectF window;  // what shows the photo: the trim, less the white border
    double pixelsPerTick = 1;

    static CropFrame in(QSizeF view, const CropSubject& subject, Length border);

    // A way in the view as a way on paper, right and down.
    Point toPaper(QPointF by) const;
    // From the frame's middle.
    Point fromMiddle(QPointF at) const { return toPaper(at - window.center()); }
};

// The window on paper: the trim less the border on every side.
Size windowSize(const CropSubject& subject, Length border);

// From pixels of the photo after its quarter turns to the view.
QTransform photoToView(const Crop& crop, const CropSubject& subject, Length border,
                       const CropFrame& frame);

// The photo's size after the crop's quarter turns.
PixelSize turnedSize(PixelSize upright, int quarterTurns);

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#pragma once

#include "app/canvas/handles.h"
#include "app/canvas/overlay.h"
#include "app/canvas/preview.h"

namespace matwright::app {

// What the overlay shows of the selection and of a drag.

// The outline of one piece's outermost box, turned with it.
void addPieceFrame(Overlay& overlay, const Piece& piece, const Viewport& viewport,
                   Overlay::Ink ink);
// Frame, handles and the stalk of the handle for turning.
void addHandles(Overlay& overlay, const HandleLayout& layout);
// Guide lines with the words of the snap, gaps with their figures, the readout.
void addMeasures(Overlay& overlay, const Preview& preview, const Viewport& viewport,
                 const QRectF& view, Scale scale);

}  // namespace matwright::app

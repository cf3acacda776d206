// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <map>
#include <optional>
#include <vector>

#include "core/making/making.h"
#include "core/sketch/sketch.h"
#include "core/snap/snap.h"

namespace matwright::app {

// What a drag in progress shows; the sketch itself stays as it was until the drag is finished.
struct Preview {
    std::map<PieceId, Piece> changed;     // pieces of the sketch as they would be
    std::vector<Piece> added;             // pieces that would be new, on top
    std::map<PieceId, Placement> placed;  // photos as they would show in their slots
    SnapResult snap;
    std::vector<SnapGap> gaps;      // the live distances to the neighbours
    std::optional<Rect> band;       // the rubber band
    std::optional<PieceId> target;  // the slot that a photo would go into
    QString readout;                // size and position, in words
    std::optional<Rect> extent;     // what the readout and the rulers speak of

    bool isEmpty() const {
        return changed.empty() && added.empty() && placed.empty() && !band && !target &&
               readout.isEmpty();
    }
};

}  // namespace matwright::app

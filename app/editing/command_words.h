// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "app/editing/session.h"

namespace matwright::app {

// What a command on `count` pieces is called in the undo menu: `one` with the kind of the lone
// piece for %1 ("Move %1": "Move photo slot"), else `many` with their number ("Move %1 pieces").
QString commandLabel(const QString& one, const QString& many, PieceKind first, std::size_t count);

// What deleting does: the selected pieces go, but for the locked ones.
struct Removal {
    Edit edit;  // empty where nothing may go
    QString label;
    std::size_t locked = 0;  // how many stay
};
Removal removalOfSelection(const Session& session);
// What to tell where locked pieces stay.
QString lockedStay();

}  // namespace matwright::app

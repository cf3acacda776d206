// SPDX-License-Identifier: MIT
#include "app/editing/command_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace matwright::app {

QString commandLabel(const QString& one, const QString& many, PieceKind first, std::size_t count) {
    return count == 1 ? one.arg(QString::fromUtf8(kindName(first))) : many.arg(count);
}

Removal removalOfSelection(const Session& session) {
    const Sketch& sketch = session.sketch();
    Removal removal;
    auto ids = session.selectedInOrder();
    removal.locked = std::erase_if(ids, [&](PieceId id) { return sketch.pieces.at(id).locked; });
    if (!ids.empty()) {
        removal.edit = removePieces(sketch, ids);
        removal.label = commandLabel(QCoreApplication::translate("Editing", "Delete %1"),
                                     QCoreApplication::translate("Editing", "Delete %1 pieces"),
                                     sketch.pieces.at(ids.front()).kind, ids.size());
    }
    return removal;
}

QString lockedStay() {
    return QCoreApplication::translate("Editing",
                                       "Locked pieces stay. Unlock them first to remove them.");
}

}  // namespace matwright::app

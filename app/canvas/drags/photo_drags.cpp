// SPDX-License-Identifier: MIT
#include "app/canvas/drags/photo_drags.h"

#include <utility>

#include "app/canvas/canvas_words.h"
#include "app/canvas/hit_test.h"
#include "app/photos/photo_commands.h"

namespace matwright::app {

void SlotDrag::update(const Pointer& now) {
    m_slot.reset();
    for (const PieceId id : piecesAt(sketch(), now.page, Length())) {
        if (sketch().pieces.at(id).kind == PieceKind::PhotoSlot && takes(id)) {
            m_slot = id;
            break;
        }
    }
    Preview preview;
    preview.target = m_slot;
    host().showPreview(std::move(preview));
    host().say(sentenceFor(m_slot));
}

QString PhotoDrop::sentenceFor(std::optional<PieceId> slot) const {
    return slot ? fitText(host().session(), *slot, m_photo)
                : canvasWords("Let go over a photo slot to put the photo into it.");
}

void PhotoDrop::finish() {
    if (slot()) {
        host().say(putIntoSlot(host().session(), *slot(), m_photo));
        host().session().select({*slot()});
    }
}

FileDrop::FileDrop(DragHost& host, QStringList files, Take take)
    : SlotDrag(host), m_files(std::move(files)), m_take(std::move(take)) {}

QString FileDrop::sentenceFor(std::optional<PieceId> slot) const {
    return slot ? canvasWords("Let go to add it to the tray and put it into %1.")
                      .arg(nameOf(sketch(), *slot))
                : canvasWords("Let go to add it to the tray of photos.");
}

QString PhotoMoveDrag::sentenceFor(std::optional<PieceId> slot) const {
    const Placement* own = matwright::find(host().session().work(), m_from);
    if (!slot || !own) {
        return canvasWords("Let go over another photo slot to move the photo there.");
    }
    return fitText(host().session(), *slot, own->photo);
}

void PhotoMoveDrag::finish() {
    if (slot()) {
        host().say(swapSlots(host().session(), m_from, *slot()));
        host().session().select({*slot()});
    }
}

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#include "app/canvas/tools/select_tool.h"

#include <algorithm>

#include "app/canvas/drags/band_drag.h"
#include "app/canvas/drags/move_drag.h"
#include "app/canvas/drags/photo_drags.h"
#include "app/canvas/drags/resize_drag.h"
#include "app/canvas/drags/rotate_drag.h"
#include "app/canvas/hit_test.h"

namespace matwright::app {

namespace {

bool adds(const Pointer& at) {
    return at.has(Qt::ShiftModifier) || at.has(Qt::ControlModifier);
}

QString words(const char* text) {
    return QCoreApplication::translate("Canvas", text);
}

}  // namespace

bool SelectTool::isOverMovableSelection(const Pointer& at) const {
    const auto& selection = host().session().selection();
    return std::ranges::any_of(piecesAt(sketch(), at.page, tolerance()), [&](PieceId id) {
        return selection.contains(id) && !sketch().pieces.at(id).locked;
    });
}

std::unique_ptr<Drag> SelectTool::press(const Pointer& at, const HandleLayout& handles) {
    Session& session = host().session();
    if (const HandleSpot* spot = handles.spotAt(at.view)) {
        if (spot->resize) {
            return std::make_unique<ResizeDrag>(host(), session.onlySelected(), *spot->resize, at);
        }
        return std::make_unique<RotateDrag>(host(), at);
    }
    if (const PieceId slot = topPieceAt(sketch(), at.page, tolerance());
        at.has(Qt::ControlModifier) && find(session.work(), slot)) {
        return std::make_unique<PhotoMoveDrag>(host(), slot);
    }
    if (!isOverMovableSelection(at) && !at.has(Qt::AltModifier)) {
        const PieceId id = topPieceAt(sketch(), at.page, tolerance());
        if (id == PieceId{} || sketch().pieces.at(id).locked) {
            return std::make_unique<BandDrag>(host(), at);
        }
        Session::Selection selection{id};
        if (adds(at)) {
            selection.insert(session.selection().begin(), session.selection().end());
        }
        session.select(std::move(selection));
        m_addedByPress = adds(at) ? id : PieceId{};
    }
    if (movableSelection(session).empty()) {
        return std::make_unique<BandDrag>(host(), at);
    }
    return std::make_unique<MoveDrag>(host(), at);
}

void SelectTool::click(const Pointer& at) {
    Session& session = host().session();
    const PieceId top = topPieceAt(sketch(), at.page, tolerance());
    if (adds(at)) {
        Session::Selection selection = session.selection();
        const bool isNew = std::exchange(m_addedByPress, PieceId{}) == top;
        if (top != PieceId{} && !isNew && selection.erase(top) == 0) {
            selection.insert(top);
        }
        session.select(std::move(selection));
        return;
    }
    PieceId picked = top;
    if (at.has(Qt::AltModifier)) {
        picked = pieceBelow(sketch(), at.page, tolerance(), session.onlySelected());
    }
    session.select(picked == PieceId{} ? Session::Selection{} : Session::Selection{picked});
}

Qt::CursorShape SelectTool::cursor(const Pointer& at, const HandleLayout& handles) const {
    if (const HandleSpot* spot = handles.spotAt(at.view)) {
        return spot->resize ? cursorOf(*spot->resize, handles.degrees) : Qt::OpenHandCursor;
    }
    const PieceId id = topPieceAt(sketch(), at.page, tolerance());
    const bool movable = id != PieceId{} && !sketch().pieces.at(id).locked;
    return movable || isOverMovableSelection(at) ? Qt::SizeAllCursor : Qt::ArrowCursor;
}

QString SelectTool::hint(const Pointer& at, const HandleLayout& handles) const {
    if (const HandleSpot* spot = handles.spotAt(at.view)) {
        return spot->resize ? words(
                                  "Drag to resize. Shift: keep the ratio, Ctrl: from the centre, "
                                  "Alt: no snap, Esc: put it back.")
                            : words(
                                  "Drag to turn. Shift: by 15 degrees, Alt: freely, Esc: put it "
                                  "back.");
    }
    const PieceId id = topPieceAt(sketch(), at.page, tolerance());
    if (id == PieceId{}) {
        return sketch().pieces.empty()
                   ? QString()
                   : words("Click a piece to select it, or drag a frame around several.");
    }
    const Piece& piece = sketch().pieces.at(id);
    const QString name = QString::fromStdString(displayName(piece));
    if (find(host().session().work(), id)) {
        return words(
                   "%1: drag to move. Ctrl: drag its photo to another slot. Shift: straight, "
                   "Alt: no snap.")
            .arg(name);
    }
    return piece.locked ? words("%1 is locked: select it and unlock it to move it.").arg(name)
                        : words(
                              "%1: drag to move. Shift: straight, Alt: no snap. Alt+click picks "
                              "the piece below.")
                              .arg(name);
}

}  // namespace matwright::app

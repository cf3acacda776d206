// SPDX-License-Identifier: MIT
#include "app/canvas/tools/photo_tool.h"

#include <QDateTime>
#include <QKeyEvent>
#include <cmath>

#include "app/canvas/canvas_words.h"
#include "app/canvas/drags/band_drag.h"
#include "app/canvas/drags/photo_shift_drag.h"
#include "app/editing/burst.h"
#include "core/making/fold.h"
#include "core/outline/outline.h"

namespace matwright::app {

namespace {

constexpr double zoomPerNotch = 1.1;
constexpr Length smallStep = Length::inches(0, 1, 32);
constexpr Length largeStep = Length::inches(0, 1, 4);
enum Kind { Zooming = 1, Moving = 2 };

}  // namespace

PhotoTool::PhotoTool(DragHost& host, PieceId slot, std::function<void()> leave)
    : Tool(host), m_slot(slot), m_leave(std::move(leave)) {}

const Placement* PhotoTool::placement() const {
    return matwright::find(host().session().work(), m_slot);
}

bool PhotoTool::isInside(const Pointer& at) const {
    const Piece* slot = matwright::find(sketch(), m_slot);
    return slot && placement() && covers(*slot, at.page);
}

std::unique_ptr<Drag> PhotoTool::press(const Pointer& at, const HandleLayout&) {
    if (isInside(at)) {
        return std::make_unique<PhotoShiftDrag>(host(), m_slot, at);
    }
    return std::make_unique<BandDrag>(host(), at);
}

void PhotoTool::click(const Pointer& at) {
    if (!isInside(at)) {
        m_leave();
    }
}

Qt::CursorShape PhotoTool::cursor(const Pointer& at, const HandleLayout&) const {
    return isInside(at) ? Qt::OpenHandCursor : Qt::ArrowCursor;
}

QString PhotoTool::hint(const Pointer&, const HandleLayout&) const {
    return canvasWords(
        "Drag the photo inside its slot; wheel, + and − zoom, arrows move. Enter, Esc or a click "
        "elsewhere: done.");
}

bool PhotoTool::wheel(const Pointer& at, double notches) {
    const Piece* slot = matwright::find(sketch(), m_slot);
    if (!isInside(at)) {
        return false;
    }
    const Point middle = trimBox(*slot).centreRoundedDown();
    zoom(std::pow(zoomPerNotch, notches), inSlot(*slot, at.page - middle));
    return true;
}

void PhotoTool::zoom(double factor, Point about) {
    const Placement& now = *placement();
    const Size window = shownWindow(sketch().pieces.at(m_slot), now.border, sketch().page);
    const PixelSize upright = host().session().work().photos.at(now.photo).upright;
    change(zoomedAbout(now.crop, upright, window, factor, about), "Zoom photo", Zooming);
}

void PhotoTool::move(Point onPaper) {
    const Placement& now = *placement();
    const Size window = shownWindow(sketch().pieces.at(m_slot), now.border, sketch().page);
    const PixelSize upright = host().session().work().photos.at(now.photo).upright;
    change(dragged(now.crop, upright, window, onPaper), "Move photo", Moving);
}

void PhotoTool::change(const Crop& crop, const char* label, int kind) {
    const qint64 now = QDateTime::currentMSecsSinceEpoch();
    if (kind != m_lastKind || now - m_lastStep > burstPauseMs) {
        m_gesture = Session::newGesture();
    }
    m_lastKind = kind;
    m_lastStep = now;
    Placement after = *placement();
    after.crop = crop;
    PhotoEdit edit;
    edit.placements[m_slot] = after;
    (void)host().session().perform(edit, canvasWords(label), m_gesture);
}

bool PhotoTool::key(const QKeyEvent& event) {
    if (!placement() || event.modifiers() & (Qt::ControlModifier | Qt::AltModifier)) {
        return false;
    }
    const Length step = event.modifiers().testFlag(Qt::ShiftModifier) ? largeStep : smallStep;
    switch (event.key()) {
        case Qt::Key_Left:
            move({-step, {}});
            return true;
        case Qt::Key_Right:
            move({step, {}});
            return true;
        case Qt::Key_Up:
            move({{}, -step});
            return true;
        case Qt::Key_Down:
            move({{}, step});
            return true;
        case Qt::Key_Plus:
        case Qt::Key_Equal:
            zoom(zoomPerNotch, {});
            return true;
        case Qt::Key_Minus:
            zoom(1 / zoomPerNotch, {});
            return true;
        case Qt::Key_Return:
        case Qt::Key_Enter:
        case Qt::Key_Escape:
            m_leave();
            return true;
        default:
            return false;
    }
}

}  // namespace matwright::app

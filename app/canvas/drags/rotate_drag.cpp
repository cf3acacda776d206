// SPDX-License-Identifier: MIT
#include "app/canvas/drags/rotate_drag.h"

#include <cstdlib>

#include "app/canvas/drags/move_drag.h"
#include "app/editing/command_words.h"
#include "core/gesture/gesture.h"

namespace matwright::app {

namespace {

// A quarter turn holds the piece when the pointer comes this near, in thousandths of a degree.
constexpr int quarterTurnReach = 2'500;

bool nearQuarterTurn(Angle angle) {
    const int past = angle.toMillidegrees() % 90'000;
    return past <= quarterTurnReach || past >= 90'000 - quarterTurnReach;
}

}  // namespace

std::map<PieceId, Piece> turnedTogether(const std::map<PieceId, Piece>& pieces, Angle by) {
    std::map<PieceId, Piece> after = pieces;
    if (pieces.size() == 1) {
        Piece& piece = after.begin()->second;
        piece.rotation = piece.rotation + by;
        return after;
    }
    const Point centre = boxAround(pieces).trim.centreRoundedDown();
    for (auto& [id, piece] : after) {
        piece = turnedAbout(piece, centre, by);
    }
    return after;
}

RotateDrag::RotateDrag(DragHost& host, const Pointer& start)
    : Drag(host), m_start(movableSelection(host.session())), m_press(start), m_now(m_start) {
    if (m_start.size() == 1) {
        m_frame = m_start.begin()->second;
    } else {
        const Rect bounds = boxAround(m_start).trim;
        m_frame.place = bounds.topLeft();
        m_frame.size = bounds.size();
    }
}

Angle RotateDrag::angleAt(const Pointer& now) const {
    const auto turned = [&](std::optional<Angle> step) {
        return turnedTo(m_frame, m_press.page, now.page, step);
    };
    if (now.has(Qt::ShiftModifier)) {
        return turned(Angle::degrees(15));
    }
    if (now.has(Qt::AltModifier) || !settings().snapOn) {
        return turned(std::nullopt);
    }
    const Angle free = turned(std::nullopt);
    return nearQuarterTurn(free) ? free.roundedTo(Angle::degrees(90)) : turned(Angle::degrees(1));
}

void RotateDrag::update(const Pointer& now) {
    const Angle angle = angleAt(now);
    m_now = turnedTogether(m_start, angle - m_frame.rotation);
    Preview preview;
    preview.changed = m_now;
    preview.readout = angleReadout(angle);
    preview.extent = boxAround(m_now).trim;
    host().showPreview(std::move(preview));
}

void RotateDrag::finish() {
    Edit edit;
    if (m_now != m_start) {
        edit.pieces.insert(m_now.begin(), m_now.end());
    }
    host().perform(edit,
                   commandLabel(QCoreApplication::translate("Canvas", "Turn %1"),
                                QCoreApplication::translate("Canvas", "Turn %1 pieces"),
                                m_start.begin()->second.kind, m_start.size()),
                   false);
}

}  // namespace matwright::app

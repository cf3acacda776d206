// SPDX-License-Identifier: MIT
#include "app/canvas/piece_keys.h"

#include <QKeyEvent>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/canvas/drags/move_drag.h"
#include "app/canvas/drags/resize_drag.h"
#include "app/canvas/drags/rotate_drag.h"
#include "app/editing/burst.h"
#include "app/editing/command_words.h"
#include "core/gesture/gesture.h"

namespace matwright::app {

namespace {

// The direction of an arrow key, or (0, 0).
QPoint directionOf(int key) {
    switch (key) {
        case Qt::Key_Left:
            return {-1, 0};
        case Qt::Key_Right:
            return {1, 0};
        case Qt::Key_Up:
            return {0, -1};
        case Qt::Key_Down:
            return {0, 1};
        default:
            return {0, 0};
    }
}

// Right and lower side out and back: the place stays.
Piece grownBy(const Piece& piece, QPoint direction, Length step) {
    const Handle handle = direction.x() != 0 ? Handle::Right : Handle::Bottom;
    return pulledAlong({piece, handle, {}, {}}, {step * direction.x(), step * direction.y()});
}

}  // namespace

Length nudgeBy(Length place, int direction, Scale scale, Qt::KeyboardModifiers modifiers) {
    const bool inches = unitOf(scale) == Unit::Inch;
    if (direction == 0) {
        return {};
    }
    if (modifiers.testFlag(Qt::ShiftModifier)) {
        return (inches ? Length::inches(0, 1, 4) : Length::millimetres(5)) * direction;
    }
    if (!modifiers.testFlag(Qt::ControlModifier)) {
        return stepOf(scale) * direction;
    }
    if (!inches) {
        return Length::hundredthMillimetres(10) * direction;
    }
    const auto nearest = static_cast<std::int64_t>(std::llround(place.toInches() * 64));
    return Length::inches(0, nearest + direction, 64) - Length::inches(0, nearest, 64);
}

bool PieceKeys::press(const QKeyEvent& event) {
    const auto modifiers = event.modifiers() & ~Qt::KeypadModifier;
    const int key = event.key();
    if (key == Qt::Key_Tab || key == Qt::Key_Backtab) {
        if (!modifiers.testFlag(Qt::ControlModifier)) {
            return false;
        }
        alsoSelect(key == Qt::Key_Tab);
        return true;
    }
    if (key == Qt::Key_Space && modifiers == Qt::ControlModifier) {
        toggleCurrent();
        return true;
    }
    if (key == Qt::Key_Delete || key == Qt::Key_Backspace) {
        removeSelected();
        return true;
    }
    return moveOrResize(key, modifiers) || turn(key, modifiers);
}

bool PieceKeys::moveOrResize(int key, Qt::KeyboardModifiers modifiers) {
    const QPoint direction = directionOf(key);
    if (direction.isNull() || modifiers.testFlag(Qt::AltModifier) ||
        m_host.session().selection().empty()) {
        return false;
    }
    const Scale scale = m_host.settings().scale;
    const bool resizes = modifiers == (Qt::ControlModifier | Qt::ShiftModifier);
    const auto pieces = movableSelection(m_host.session());
    Edit edit;
    if (!pieces.empty()) {
        const Point place = pieces.begin()->second.place;
        const Point by{nudgeBy(place.x, direction.x(), scale, modifiers),
                       nudgeBy(place.y, direction.y(), scale, modifiers)};
        for (const auto& [id, piece] : pieces) {
            edit.pieces.emplace(
                id, resizes ? grownBy(piece, direction, stepOf(scale)) : movedBy(piece, by));
        }
    }
    perform(edit, resizes ? Burst::Resize : Burst::Move,
            resizes ? QCoreApplication::translate("Canvas", "Resize with the keys")
                    : QCoreApplication::translate("Canvas", "Nudge"));
    return true;
}

bool PieceKeys::turn(int key, Qt::KeyboardModifiers modifiers) {
    const bool back = key == Qt::Key_BracketLeft || key == Qt::Key_BraceLeft;
    const bool forth = key == Qt::Key_BracketRight || key == Qt::Key_BraceRight;
    if (!back && !forth) {
        return false;
    }
    const bool far = modifiers.testFlag(Qt::ShiftModifier) || key == Qt::Key_BraceLeft ||
                     key == Qt::Key_BraceRight;
    const Angle by = Angle::degrees(far ? 15 : 1);
    Edit edit;
    if (const auto pieces = movableSelection(m_host.session()); !pieces.empty()) {
        const auto after = turnedTogether(pieces, back ? -by : by);
        edit.pieces.insert(after.begin(), after.end());
    }
    perform(edit, Burst::Turn, QCoreApplication::translate("Canvas", "Turn with the keys"));
    return true;
}

void PieceKeys::perform(const Edit& edit, Burst burst, const QString& label) {
    const Session& session = m_host.session();
    const bool goesOn = burst == m_burst && m_burstSelection == session.selection() &&
                        m_sinceLast.isValid() && m_sinceLast.elapsed() < burstPauseMs;
    if (!goesOn) {
        m_gesture = Session::newGesture();
        m_burst = burst;
        m_burstSelection = session.selection();
    }
    m_sinceLast.start();
    m_host.perform(edit, label, false, m_gesture);
}

void PieceKeys::removeSelected() {
    const Removal removal = removalOfSelection(m_host.session());
    m_host.perform(removal.edit, removal.label, false);
    if (removal.locked > 0) {
        m_host.say(lockedStay());
    }
}

PieceId PieceKeys::neighbourOf(PieceId id, bool forward) const {
    const auto& order = m_host.session().sketch().order;
    if (order.empty()) {
        return {};
    }
    const auto found = std::ranges::find(order, id);
    if (found == order.end()) {
        return forward ? order.front() : order.back();
    }
    if (forward) {
        return std::next(found) == order.end() ? PieceId{} : *std::next(found);
    }
    return found == order.begin() ? PieceId{} : *std::prev(found);
}

bool PieceKeys::step(bool forward) {
    Session& session = m_host.session();
    const auto selected = session.selectedInOrder();
    const PieceId from =
        selected.empty() ? PieceId{} : (forward ? selected.back() : selected.front());
    const PieceId to = neighbourOf(from, forward);
    if (to == PieceId{}) {
        return false;
    }
    session.select({to});
    return true;
}

// Where Ctrl+Tab goes on from: the piece it came to last, as long as that is what the selection was
// left with, else the end of the selection.
PieceId PieceKeys::current(bool forward) const {
    const Session& session = m_host.session();
    if (m_current != PieceId{} && find(session.sketch(), m_current) &&
        m_currentSelection == session.selection()) {
        return m_current;
    }
    const auto selected = session.selectedInOrder();
    return selected.empty() ? PieceId{} : (forward ? selected.back() : selected.front());
}

void PieceKeys::setCurrent(PieceId id, Session::Selection selection) {
    m_host.session().select(std::move(selection));
    m_current = id;
    m_currentSelection = m_host.session().selection();
}

void PieceKeys::alsoSelect(bool forward) {
    const PieceId to = neighbourOf(current(forward), forward);
    if (to != PieceId{}) {
        Session::Selection selection = m_host.session().selection();
        selection.insert(to);
        setCurrent(to, std::move(selection));
    }
}

void PieceKeys::toggleCurrent() {
    const PieceId id = current(true);
    if (id != PieceId{}) {
        Session::Selection selection = m_host.session().selection();
        if (selection.erase(id) == 0) {
            selection.insert(id);
        }
        setCurrent(id, std::move(selection));
    }
}

}  // namespace matwright::app

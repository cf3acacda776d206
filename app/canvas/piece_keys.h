// SPDX-License-Identifier: MIT
#pragma once

#include <QElapsedTimer>

#include "app/canvas/drags/drag.h"

class QKeyEvent;

namespace matwright::app {

// What the keyboard does to the selected pieces, so that nothing needs a drag:
//   arrows                 move by a step of the scale (Shift: 1/4 in or 5 mm, Ctrl: 1/64 in or
//                          0.1 mm)
//   Ctrl+Shift+arrows      make wider, narrower, higher, lower by a step of the scale
//   [ and ]                turn by 1 degree, with Shift (or { and }) by 15
//   Delete, Backspace      remove
//   Ctrl+Tab               also select the next piece, with Shift the one before
//   Ctrl+Space             let go of the piece Ctrl+Tab came to, or take it again: so any pieces
//   can
//                          be selected together
// A burst of the same keys becomes one undo step.
class PieceKeys {
  public:
    explicit PieceKeys(DragHost& host) : m_host(host) {}

    // Whether the key was one of these.
    bool press(const QKeyEvent& event);
    // Tab and Shift+Tab: selects the next piece in order, bottom to top. False past the last one
    // (or before the first), so that the focus can move on.
    bool step(bool forward);

  private:
    enum class Burst { None, Move, Resize, Turn };
    bool moveOrResize(int key, Qt::KeyboardModifiers modifiers);
    bool turn(int key, Qt::KeyboardModifiers modifiers);
    void perform(const Edit& edit, Burst burst, const QString& label);
    void removeSelected();
    void alsoSelect(bool forward);
    void toggleCurrent();
    PieceId current(bool forward) const;
    void setCurrent(PieceId id, Session::Selection selection);
    PieceId neighbourOf(PieceId id, bool forward) const;

    DragHost& m_host;
    Burst m_burst = Burst::None;
    int m_gesture = 0;
    Session::Selection m_burstSelection;
    QElapsedTimer m_sinceLast;
    PieceId m_current;
    Session::Selection m_currentSelection;
};

// How far an arrow key moves what stands at `place` along its axis; `direction` is 1 or -1. A 1/64
// in is half a tick more than whole ones, so that step goes from one rounded 64th to the next: two
// of them are exactly 1/32 in.
Length nudgeBy(Length place, int direction, Scale scale, Qt::KeyboardModifiers modifiers);

}  // namespace matwright::app

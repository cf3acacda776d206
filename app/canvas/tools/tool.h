// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <optional>

#include "app/canvas/drags/drag.h"
#include "app/canvas/handles.h"

class QKeyEvent;

namespace matwright::app {

// What the left button does: which drag a press starts, and what a press that never became a drag
// means. Tools keep no copy of the sketch.
class Tool {
  public:
    explicit Tool(DragHost& host) : m_host(host) {}
    virtual ~Tool() = default;
    Tool(const Tool&) = delete;
    Tool& operator=(const Tool&) = delete;

    // `handles` are the ones on show. Never null.
    virtual std::unique_ptr<Drag> press(const Pointer& at, const HandleLayout& handles) = 0;
    // Pressed and released without moving.
    virtual void click(const Pointer& at) = 0;
    virtual Qt::CursorShape cursor(const Pointer& at, const HandleLayout& handles) const = 0;
    // One line for the status bar.
    virtual QString hint(const Pointer& at, const HandleLayout& handles) const = 0;
    // Whether the tool is done once a drag or click has added something.
    virtual bool isForOneUse() const { return false; }
    // The wheel and the keys belong to a tool that takes them (true) before they are the page's.
    virtual bool wheel(const Pointer& /*at*/, double /*notches*/) { return false; }
    virtual bool key(const QKeyEvent& /*event*/) { return false; }
    // The slot whose photo the tool works on.
    virtual std::optional<PieceId> slotInHand() const { return std::nullopt; }

  protected:
    DragHost& host() const { return m_host; }
    const Sketch& sketch() const { return m_host.session().sketch(); }
    Length tolerance() const { return m_host.viewport().toLength(pickReach); }

  private:
    DragHost& m_host;
};

}  // namespace matwright::app

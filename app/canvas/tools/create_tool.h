// SPDX-License-Identifier: MIT
#pragma once

#include "app/canvas/tools/tool.h"

namespace matwright::app {

// Draws a piece of one kind from corner to corner; a click lays one of the usual size, held by its
// middle.
class CreateTool final : public Tool {
  public:
    CreateTool(DragHost& host, Piece prototype);
    std::unique_ptr<Drag> press(const Pointer& at, const HandleLayout& handles) override;
    void click(const Pointer& at) override;
    Qt::CursorShape cursor(const Pointer&, const HandleLayout&) const override {
        return Qt::CrossCursor;
    }
    QString hint(const Pointer& at, const HandleLayout& handles) const override;
    bool isForOneUse() const override { return true; }
    const Piece& prototype() const { return m_prototype; }

  private:
    Piece m_prototype;
};

}  // namespace matwright::app

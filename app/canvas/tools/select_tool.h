// SPDX-License-Identifier: MIT
#pragma once

#include "app/canvas/tools/tool.h"

namespace matwright::app {

// Selects, moves, resizes and turns. A click takes the topmost piece, Alt+click the one below
// what is selected; Shift or Ctrl adds and takes away. A press on a selected piece
// drags the selection even where another piece lies over it. Locked pieces can be selected only.
class SelectTool final : public Tool {
  public:
    using Tool::Tool;
    std::unique_ptr<Drag> press(const Pointer& at, const HandleLayout& handles) override;
    void click(const Pointer& at) override;
    Qt::CursorShape cursor(const Pointer& at, const HandleLayout& handles) const override;
    QString hint(const Pointer& at, const HandleLayout& handles) const override;

  private:
    bool isOverMovableSelection(const Pointer& at) const;

    PieceId m_addedByPress;
};

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#include "app/canvas/tools/create_tool.h"

#include <utility>

#include "app/canvas/drags/create_drag.h"
#include "app/canvas/drags/drop_drag.h"

namespace matwright::app {

CreateTool::CreateTool(DragHost& host, Piece prototype)
    : Tool(host), m_prototype(std::move(prototype)) {}

std::unique_ptr<Drag> CreateTool::press(const Pointer& at, const HandleLayout&) {
    return std::make_unique<CreateDrag>(host(), m_prototype, at);
}

void CreateTool::click(const Pointer& at) {
    DropDrag drop(host(), {m_prototype});
    drop.update(at);
    drop.finish();
}

QString CreateTool::hint(const Pointer&, const HandleLayout&) const {
    return QCoreApplication::translate(
               "Canvas",
               "Drag to draw a %1, or click to lay one. Shift: square, Ctrl: from the centre, "
               "Alt: no snap.")
        .arg(QString::fromUtf8(kindName(m_prototype.kind)));
}

}  // namespace matwright::app

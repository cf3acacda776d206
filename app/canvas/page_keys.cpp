// SPDX-License-Identifier: MIT
#include "app/canvas/page_keys.h"

#include <QCoreApplication>

namespace matwright::app {
namespace {

QString words(const char* text) {
    return QCoreApplication::translate("PageKeys", text);
}

}  // namespace

QList<PageKey> pageKeys() {
    using Keys = QKeyCombination;
    constexpr auto ctrlShift = Qt::ControlModifier | Qt::ShiftModifier;
    return {
        {words("Tab, Shift+Tab"), words("Select the next or previous piece"), Keys(Qt::Key_Tab)},
        {words("Ctrl+Tab"), words("Also select the next piece"),
         Keys(Qt::ControlModifier, Qt::Key_Tab)},
        {words("Arrow keys"), words("Move by one step of the scale"), Keys(Qt::Key_Right)},
        {words("Shift+arrow keys"), words("Move by 1/4 in or 5 mm"),
         Keys(Qt::ShiftModifier, Qt::Key_Right)},
        {words("Ctrl+arrow keys"), words("Move by 1/64 in or 0.1 mm"),
         Keys(Qt::ControlModifier, Qt::Key_Right)},
        {words("Ctrl+Shift+arrow keys"), words("Make wider, narrower, higher or lower"),
         Keys(ctrlShift, Qt::Key_Right)},
        {words("[ and ]"), words("Turn by 1 degree"), Keys(Qt::Key_BracketRight)},
        {words("{ and }"), words("Turn by 15 degrees"),
         Keys(Qt::ShiftModifier, Qt::Key_BraceRight)},
        {words("Delete, Backspace"), words("Remove the selected pieces"), Keys(Qt::Key_Backspace)},
        {words("Enter"), words("Go to the figures of the piece; lay one down with a drawing tool"),
         Keys(Qt::Key_Return)},
        {words("Esc"), words("Put a drag back, then the tool down, then select nothing"),
         Keys(Qt::Key_Escape)},
        {words("Space, held"), words("Drag the page itself"), Keys(Qt::Key_Space)},
        {words("Shift, held"),
         words("While dragging: straight, keep the ratio, 15-degree steps"),
         {}},
        {words("Ctrl, held"), words("While dragging: resize from the centre"), {}},
        {words("Alt, held"), words("While dragging: no snapping"), {}},
    };
}

}  // namespace matwright::app

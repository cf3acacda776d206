// SPDX-License-Identifier: MIT
#include "app/panels/finish_typing.h"

#include <QApplication>
#include <QPointer>
#include <QWidget>

namespace matwright::app {

void finishTyping() {
    if (const QPointer<QWidget> typing = QApplication::focusWidget()) {
        typing->clearFocus();
        if (typing) {  // what was typed may have changed what is shown
            typing->setFocus();
        }
    }
}

}  // namespace matwright::app

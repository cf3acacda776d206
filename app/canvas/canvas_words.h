// SPDX-License-Identifier: MIT
#pragma once

#include <QCoreApplication>
#include <QString>

namespace matwright::app {

// Words of the canvas where no QObject is at hand to translate them.
inline QString canvasWords(const char* text) {
    return QCoreApplication::translate("Canvas", text);
}

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#pragma once

#include <QKeyCombination>
#include <QList>
#include <QString>
#include <optional>

namespace matwright::app {

// A key the page itself answers to while it has the focus, in words for a list of them.
struct PageKey {
    QString keys;    // "Shift+arrow keys"
    QString effect;  // "Move 1/4 in or 5 mm"
    // One of these keys; none for what is held down during a drag.
    std::optional<QKeyCombination> example;
};

// All of them: what PageView and PieceKeys answer to.
QList<PageKey> pageKeys();

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>

#include "app/window/help_actions.h"

namespace matwright::app {

// A table of every command and its keys, with the keys of the canvas beneath.
class ShortcutsDialog final : public QDialog {
    Q_OBJECT

  public:
    ShortcutsDialog(const QList<ShortcutLine>& lines, QWidget* parent);
};

}  // namespace matwright::app

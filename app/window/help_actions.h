// SPDX-License-Identifier: MIT
#pragma once

#include <QMenu>
#include <QMenuBar>
#include <QObject>
#include <QStringList>

namespace matwright::app {

// The Help menu.
class HelpActions final : public QObject {
    Q_OBJECT

  public:
    // The list of shortcuts is read from `bar` when it is asked for.
    HelpActions(QMenuBar& bar, QWidget& window);

    void addTo(QMenu& menu);

  private:
    void showShortcuts();
    void showAbout();

    QMenuBar& m_bar;
    QWidget& m_window;
};

struct ShortcutLine {
    QString command;  // "Edit: Undo"
    QString keys;
};
// Every command of the menus in their order under its lasting name, with its keys, or the way
// through the menus ("Alt+V, Z") where it has none; then what the page itself answers to. Menus
// that list files are one line.
QList<ShortcutLine> shortcutsOf(const QMenuBar& bar);

}  // namespace matwright::app

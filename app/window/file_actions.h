// SPDX-License-Identifier: MIT
#pragma once

#include <QAction>
#include <QMenu>
#include <QObject>

#include "app/window/file_flow.h"

namespace matwright::app {

// The File menu.
class FileActions final : public QObject {
    Q_OBJECT

  public:
    // Asks the window's own close() to quit, so that unsaved work is asked about once.
    FileActions(FileFlow& flow, SettingsStore& settings, QWidget& window);

    void addTo(QMenu& menu);

    QAction* const startNew;
    QAction* const open;
    QAction* const save;
    QAction* const saveAs;
    QAction* const recovered;
    QAction* const makeTemplate;  // triggered() is for the window to answer
    QAction* const quit;

  private:
    void fillRecentMenu();

    FileFlow& m_flow;
    SettingsStore& m_settings;
    QMenu* m_recentMenu;
};

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#pragma once

#include <QAction>
#include <QMenu>
#include <QObject>

#include "app/canvas/canvas.h"
#include "app/window/workplace.h"

namespace matwright::app {

// The zoom part of the View menu.
class ViewActions final : public QObject {
    Q_OBJECT

  public:
    ViewActions(Workplace workplace, Canvas& canvas);

    void addTo(QMenu& menu);

    QAction* const zoomIn;
    QAction* const zoomOut;
    QAction* const fitPage;
    QAction* const fitSelection;
    QAction* const trueSize;
    QAction* const measureScreen;

  private:
    void askForScreen();
    void updateEnabled();

    Workplace m_workplace;
};

}  // namespace matwright::app

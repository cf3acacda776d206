// SPDX-License-Identifier: MIT
#pragma once

#include <QAction>
#include <QMenu>
#include <QObject>

#include "app/window/workplace.h"

namespace matwright::app {

// The Edit menu: undo, the clipboard and the selection.
class EditActions final : public QObject {
    Q_OBJECT

  public:
    EditActions(Workplace workplace, QObject* parent);

    void addTo(QMenu& menu);
    // Looks what the clipboard holds, which may mean asking another program; it is looked at again
    // whenever it changes. Until the first look there counts as nothing to paste.
    void lookAtClipboard();

    QAction* const undo;
    QAction* const redo;
    QAction* const cut;
    QAction* const copy;
    QAction* const paste;
    QAction* const duplicate;
    QAction* const remove;
    QAction* const selectAll;
    QAction* const selectNone;

  private:
    bool copySelection();
    void pasteFromClipboard();
    void duplicateSelection();
    // Locked pieces stay; says so where there are some.
    void removeSelection(bool isCut);
    void updateEnabled();

    Workplace m_workplace;
};

}  // namespace matwright::app

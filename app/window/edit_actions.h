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
    std::vector<Piece> selectedPieces() const;
    bool copySelection();
    void pasteFromClipboard();
    void duplicateSelection();
    // Locked pieces stay; says so where there are some.
    void removeSelection(bool isCut);
    void updateEnabled();

    Workplace m_workplace;
};

}  // namespace matwright::app

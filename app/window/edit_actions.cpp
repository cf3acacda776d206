// SPDX-License-Identifier: MIT
#include "app/window/edit_actions.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QMimeData>
#include <algorithm>
#include <utility>

#include "app/editing/command_words.h"
#include "app/editing/piece_mime.h"
#include "app/window/icons.h"
#include "app/window/new_action.h"
#include "app/window/pasting.h"
#include "core/making/copies.h"

namespace matwright::app {
namespace {

// The undo stack words these itself ("Undo move"); the toolbar's text stays one word.
QAction* historyAction(QAction* action, const QString& shortText, const QString& iconName,
                       const QList<QKeySequence>& keys) {
    action->setIconText(shortText);
    setLastingName(*action, shortText);
    action->setIcon(lineIcon(iconName));
    action->setIconVisibleInMenu(false);
    action->setShortcuts(keys);
    return action;
}

}  // namespace

EditActions::EditActions(Workplace workplace, QObject* parent)
    : QObject(parent),
      undo(historyAction(workplace.session.undoStack().createUndoAction(this, tr("&Undo")),
                         tr("Undo"), QStringLiteral("undo"), {QKeySequence(Qt::CTRL | Qt::Key_Z)})),
      redo(historyAction(
          workplace.session.undoStack().createRedoAction(this, tr("&Redo")), tr("Redo"),
          QStringLiteral("redo"),
          {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)})),
      cut(newAction(this,
                    {tr("Cu&t"),
                     tr("Move the selected pieces to the clipboard"),
                     QKeySequence(Qt::CTRL | Qt::Key_X),
                     {},
                     {}},
                    [this] {
                        if (copySelection()) {
                            removeSelection(true);
                        }
                    })),
      copy(newAction(this,
                     {tr("&Copy"),
                      tr("Copy the selected pieces to the clipboard"),
                      QKeySequence(Qt::CTRL | Qt::Key_C),
                      {},
                      {}},
                     [this] { copySelection(); })),
      paste(newAction(this,
                      {tr("&Paste"),
                       tr("Add the pieces on the clipboard"),
                       QKeySequence(Qt::CTRL | Qt::Key_V),
                       {},
                       {}},
                      [this] { pasteFromClipboard(); })),
      duplicate(newAction(this,
                          {tr("&Duplicate"),
                           tr("Add a copy of the selected pieces"),
                           QKeySequence(Qt::CTRL | Qt::Key_D),
                           {},
                           {}},
                          [this] { duplicateSelection(); })),
      remove(newAction(
          this,
          {tr("D&elete"), tr("Remove the selected pieces"), QKeySequence(Qt::Key_Delete), {}, {}},
          [this] { removeSelection(false); })),
      selectAll(newAction(
          this,
          {tr("Select &all"), tr("Select every piece"), QKeySequence(Qt::CTRL | Qt::Key_A), {}, {}},
          [this] { m_workplace.session.selectAll(); })),
      selectNone(newAction(this,
                           {tr("Select &nothing"),
                            tr("Let go of the selection"),
                            QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_A),
                            {},
                            {}},
                           [this] { m_workplace.session.clearSelection(); })),
      m_workplace(std::move(workplace)) {
    connect(&m_workplace.session, &Session::changed, this, &EditActions::updateEnabled);
    updateEnabled();
    paste->setEnabled(false);
    connect(QGuiApplication::clipboard(), &QClipboard::dataChanged, this,
            &EditActions::lookAtClipboard);
}

void EditActions::lookAtClipboard() {
    paste->setEnabled(mayHoldPieces(QGuiApplication::clipboard()->mimeData()));
}

void EditActions::addTo(QMenu& menu) {
    menu.addActions({undo, redo});
    menu.addSeparator();
    menu.addActions({cut, copy, paste, duplicate, remove});
    menu.addSeparator();
    menu.addActions({selectAll, selectNone});
}

bool EditActions::copySelection() {
    const Session& session = m_workplace.session;
    if (session.selection().empty()) {
        return false;
    }
    QGuiApplication::clipboard()->setMimeData(
        toMime(copyOf(session.making(), session.selectedInOrder())));
    return true;
}

void EditActions::pasteFromClipboard() {
    Making pieces = copyFromMime(QGuiApplication::clipboard()->mimeData());
    if (pieces.sketch.pieces.empty()) {
        m_workplace.say(tr("There are no pieces on the clipboard. Copy some first."));
        return;
    }
    const Making& making = m_workplace.session.making();
    pieces.sketch = placedForPaste(making.sketch, std::move(pieces.sketch));
    m_workplace.performAndSelectAdded(addCopy(making, pieces), tr("paste"));
}

void EditActions::duplicateSelection() {
    const Session& session = m_workplace.session;
    Making pieces = copyOf(session.making(), session.selectedInOrder());
    pieces.sketch = placedForPaste(session.sketch(), std::move(pieces.sketch));
    for (auto& [id, piece] : pieces.sketch.pieces) {
        piece.locked = false;
    }
    m_workplace.performAndSelectAdded(addCopy(session.making(), pieces), tr("duplicate"));
}

void EditActions::removeSelection(bool isCut) {
    const Removal removal = removalOfSelection(m_workplace.session);
    m_workplace.perform(removal.edit, isCut ? tr("cut") : removal.label);
    if (removal.locked > 0) {
        m_workplace.say(lockedStay());
    }
}

void EditActions::updateEnabled() {
    const bool any = !m_workplace.session.selection().empty();
    for (QAction* action : {cut, copy, duplicate, remove, selectNone}) {
        action->setEnabled(any);
    }
    selectAll->setEnabled(!m_workplace.session.sketch().pieces.empty());
}

}  // namespace matwright::app

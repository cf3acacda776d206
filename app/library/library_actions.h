// SPDX-License-Identifier: MIT
#pragma once

#include <QAction>
#include <QMenu>
#include <QObject>

namespace matwright::app {

// Every command of the library. They only stand for it; the library view answers them.
class LibraryActions final : public QObject {
    Q_OBJECT

  public:
    // `view` is where their keys count.
    explicit LibraryActions(QWidget& view);

    // Greys what is not for so many sketches. A double page cannot be turned by a quarter.
    void setSelected(int count, bool isSinglePage);

    // The Library menu, and what a click with the other button offers.
    QList<QAction*> inMenu();
    QList<QAction*> forSelection();

    QAction* const startPage;
    QAction* const open;
    QAction* const makeCopy;
    QAction* const turnOrMirror;  // a menu
    QAction* const mirrorLeftRight;
    QAction* const mirrorTopBottom;
    QAction* const upsideDown;
    QAction* const quarterClockwise;
    QAction* const quarterCounterClockwise;
    QAction* const carryOver;
    QAction* const showFamily;
    QAction* const favourite;
    QAction* const tag;
    QAction* const rename;
    QAction* const moveToFolder;
    QAction* const trash;
    QAction* const exportZip;
    QAction* const contactSheet;
    QAction* const addFiles;
    QAction* const addFolder;
    QAction* const putInStarters;
    QAction* const chooseFolder;
    QAction* const showProblems;
    QAction* const lookAgain;
    QAction* const find;
    QAction* const more;  // a menu of what the buttons leave out

  private:
    QAction* add(const QString& text, const QString& hint, const QKeySequence& keys = {});

    QMenu* m_turns;
    QMenu* m_more;
};

}  // namespace matwright::app

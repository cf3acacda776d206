// SPDX-License-Identifier: MIT
#include "app/library/library_actions.h"

namespace matwright::app {
namespace {

QAction* separator(QObject* parent) {
    auto* action = new QAction(parent);
    action->setSeparator(true);
    return action;
}

}  // namespace

LibraryActions::LibraryActions(QWidget& view)
    : QObject(&view),
      startPage(add(tr("&Start a page from it"),
                    tr("Start a new page with this sketch; the sketch stays as it is"),
                    QKeySequence(Qt::CTRL | Qt::Key_Return))),
      open(add(tr("&Open to change"), tr("Open the sketch itself, to change it"),
               QKeySequence(Qt::CTRL | Qt::Key_E))),
      makeCopy(add(tr("Make a &copy"), tr("Put a copy of this sketch into the library"),
                   QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_D))),
      turnOrMirror(
          add(tr("&Turn or mirror"), tr("Start a new page with the sketch the other way round"))),
      mirrorLeftRight(add(tr("Mirror &left-right"),
                          tr("Start a new page with the sketch mirrored left-right"))),
      mirrorTopBottom(add(tr("Mirror &top-bottom"),
                          tr("Start a new page with the sketch mirrored top-bottom"))),
      upsideDown(add(tr("&Upside down"), tr("Start a new page with the sketch upside down"))),
      quarterClockwise(add(tr("Quarter turn to the &right"),
                           tr("Start a new page with the sketch turned to the right"))),
      quarterCounterClockwise(add(tr("Quarter turn to the l&eft"),
                                  tr("Start a new page with the sketch turned to the left"))),
      carryOver(
          add(tr("Carry o&ver to…"), tr("Start a new page of another size with this sketch"))),
      showFamily(add(tr("Show all a&like"),
                     tr("Show the sketches that are the same but for mirror, turn or tiny shifts"),
                     QKeySequence(Qt::CTRL | Qt::Key_J))),
      favourite(add(tr("&Favourite"), tr("Make it a favourite, or none any more"),
                    QKeySequence(Qt::CTRL | Qt::Key_B))),
      tag(add(tr("Add a ta&g"), tr("Type a tag for it"), QKeySequence(Qt::CTRL | Qt::Key_T))),
      rename(add(tr("&Rename…"), tr("Give the sketch another name"), QKeySequence(Qt::Key_F2))),
      moveToFolder(add(tr("Move to a fol&der…"),
                       tr("Put it into a sub-folder of the library, which may be new"),
                       QKeySequence(Qt::SHIFT | Qt::Key_F2))),
      trash(add(tr("&Move to trash"), tr("Move it to the desktop's trash"),
                QKeySequence(Qt::Key_Delete))),
      exportZip(add(tr("E&xport as zip…"), tr("Put the selected sketches into one zip file"))),
      contactSheet(add(tr("Contact s&heet…"),
                       tr("Make a PDF of many sketches a sheet, to leaf through on paper"),
                       QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P))),
      addFiles(add(tr("&Add files…"), tr("Copy sketch files into the library"))),
      addFolder(add(tr("Add a fold&er…"), tr("Copy all sketches of a folder into the library"))),
      putInStarters(add(tr("&Put in the starter sketches"),
                        tr("Copy the sketches that come with the program into the library"))),
      chooseFolder(add(tr("Li&brary folder…"), tr("Keep the library in another folder"))),
      showProblems(add(tr("F&iles that could not be read…"),
                       tr("List what is in the folder and cannot be shown"))),
      lookAgain(add(tr("Loo&k at the folder again"), tr("See what has changed in the folder"),
                    QKeySequence(Qt::Key_F5))),
      find(add(tr("F&ind"), tr("Search by words"), QKeySequence(Qt::CTRL | Qt::Key_F))),
      more(add(tr("More"), tr("More that can be done with it"))),
      m_turns(new QMenu(&view)),
      m_more(new QMenu(&view)) {
    m_turns->addActions(
        {mirrorLeftRight, mirrorTopBottom, upsideDown, quarterClockwise, quarterCounterClockwise});
    turnOrMirror->setMenu(m_turns);
    m_more->addActions({makeCopy, favourite, tag, rename, moveToFolder, showFamily, exportZip,
                        contactSheet, separator(this), trash});
    more->setMenu(m_more);
    view.addActions(inMenu());
    view.addAction(find);
    setSelected(0, false);
}

QAction* LibraryActions::add(const QString& text, const QString& hint, const QKeySequence& keys) {
    auto* action = new QAction(text, this);
    action->setShortcut(keys);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    action->setStatusTip(hint);
    action->setToolTip(hint);
    return action;
}

QList<QAction*> LibraryActions::forSelection() {
    return {startPage,       open,         separator(this), turnOrMirror, carryOver,
            makeCopy,        showFamily,   separator(this), favourite,    tag,
            rename,          moveToFolder, separator(this), exportZip,    contactSheet,
            separator(this), trash};
}

QList<QAction*> LibraryActions::inMenu() {
    return forSelection() + QList<QAction*>{separator(this), addFiles,     addFolder, putInStarters,
                                            separator(this), chooseFolder, lookAgain, showProblems};
}

void LibraryActions::setSelected(int count, bool isSinglePage) {
    for (QAction* action : {startPage, open, makeCopy, turnOrMirror, mirrorLeftRight,
                            mirrorTopBottom, upsideDown, carryOver, showFamily, rename}) {
        action->setEnabled(count == 1);
    }
    for (QAction* action : {quarterClockwise, quarterCounterClockwise}) {
        action->setEnabled(count == 1 && isSinglePage);
    }
    for (QAction* action : {favourite, tag, moveToFolder, trash, exportZip, more}) {
        action->setEnabled(count > 0);
    }
}

}  // namespace matwright::app

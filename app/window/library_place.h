// SPDX-License-Identifier: MIT
#pragma once

#include <QAction>
#include <QByteArray>
#include <QList>
#include <QMainWindow>
#include <QMenu>
#include <QStackedWidget>
#include <QToolBar>

#include "app/files/sketch_document.h"
#include "app/library/library_part.h"
#include "app/window/file_flow.h"

namespace matwright::app {

// The library in the middle of the window, in the place of the page. Its part is opened when it is
// wanted first. While it shows, what belongs to the page is out of the way (panels, tools, menus,
// with their keys), and comes back as it was.
class LibraryPlace final : public QObject, public LibraryHost {
    Q_OBJECT

  public:
    // `centre` holds the page as its only widget so far.
    LibraryPlace(Workplace workplace, FileFlow& files, SketchDocument& document,
                 QStackedWidget& centre, QMainWindow& window, QString partsFolder);

    // Shows or leaves the library; checked while it shows.
    QAction* const show;

    // What is not there while the library shows.
    void addForPageOnly(QMenu& menu) { m_pageMenus.append(menu.menuAction()); }
    void addForPageOnly(QToolBar& bar) { m_pageBars.append(&bar); }
    // The Library menu stands before this one.
    void addMenuBefore(QAction* menu) { m_nextMenu = menu; }

    bool isShown() const { return show->isChecked(); }
    // Nothing before the library was shown first.
    QWidget* view() const { return m_view; }

    bool openSketch(const QString& path) override;
    bool startPage(Sketch sketch) override;
    void showPage() override;
    void say(const QString& sentence) override { m_workplace.say(sentence); }

    // The docks as they are while the page shows.
    QByteArray dockState(int version) const;

  private:
    bool makeView();
    void change(bool toLibrary);
    void hidePageParts();
    void showPageParts();

    Workplace m_workplace;
    FileFlow& m_files;
    SketchDocument& m_document;
    QStackedWidget& m_centre;
    QMainWindow& m_window;
    QString m_partsFolder;
    QWidget* m_view = nullptr;
    QMenu* m_menu = nullptr;
    QAction* m_nextMenu = nullptr;
    QList<QAction*> m_pageMenus;
    QList<QToolBar*> m_pageBars;
    QByteArray m_docks;
};

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#include "app/window/library_place.h"

#include <QDockWidget>
#include <QMenuBar>
#include <QStatusBar>
#include <utility>

#include "app/files/paths.h"
#include "app/parts/parts.h"
#include "app/window/new_action.h"

namespace matwright::app {

LibraryPlace::LibraryPlace(Workplace workplace, FileFlow& files, SketchDocument& document,
                           QStackedWidget& centre, QMainWindow& window, QString partsFolder)
    : QObject(&window),
      show(newAction(this, {tr("&Library"), tr("Show your sketches, or go back to the page"),
                            QKeySequence(Qt::Key_F4), QStringLiteral("library"), tr("Library")})),
      m_workplace(std::move(workplace)),
      m_files(files),
      m_document(document),
      m_centre(centre),
      m_window(window),
      m_partsFolder(std::move(partsFolder)) {
    show->setCheckable(true);
    connect(show, &QAction::toggled, this, &LibraryPlace::change);
    connect(&m_workplace.session, &Session::changed, this, [this](const Change& change) {
        if (change.kinds == Change::Everything) {  // another sketch was opened, from wherever
            showPage();
        }
    });
}

bool LibraryPlace::makeView() {
    const auto part = openPart<LibraryPart>(m_partsFolder, QStringLiteral("library"));
    if (!part) {
        m_workplace.questions.tell(tr("The library cannot be shown"), shownText(part.error()));
        return false;
    }
    m_view = (*part)->makeView(*this, m_workplace.settings, &m_centre);
    m_view->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    m_centre.addWidget(m_view);
    m_menu = new QMenu(tr("&Library"), &m_window);
    m_menu->addActions((*part)->commandsOf(*m_view));
    m_window.menuBar()->insertMenu(m_nextMenu, m_menu);
    return true;
}

void LibraryPlace::change(bool toLibrary) {
    finishTyping();
    if (toLibrary && !m_view && !makeView()) {
        show->setChecked(false);
        return;
    }
    if (!m_view) {
        return;
    }
    // Only what shows may ask for room: the panels of both at once would make the window grow.
    const auto wish = toLibrary ? QSizePolicy::Preferred : QSizePolicy::Ignored;
    m_view->setSizePolicy(wish, wish);
    if (toLibrary) {
        hidePageParts();
        m_centre.setCurrentWidget(m_view);
    } else {
        m_centre.setCurrentIndex(0);
        showPageParts();
        m_centre.currentWidget()->setFocus();
    }
    m_menu->menuAction()->setVisible(toLibrary);
}

void LibraryPlace::hidePageParts() {
    m_docks = m_window.saveState();
    for (QDockWidget* dock : m_window.findChildren<QDockWidget*>()) {
        dock->hide();
        dock->toggleViewAction()->setEnabled(false);
    }
    for (QToolBar* bar : m_pageBars) {
        bar->hide();
    }
    for (QAction* menu : m_pageMenus) {
        menu->setVisible(false);
    }
    m_window.statusBar()->hide();  // it tells of the page
}

void LibraryPlace::showPageParts() {
    for (QDockWidget* dock : m_window.findChildren<QDockWidget*>()) {
        dock->toggleViewAction()->setEnabled(true);
    }
    for (QAction* menu : m_pageMenus) {
        menu->setVisible(true);
    }
    m_window.statusBar()->show();
    m_window.restoreState(m_docks);
    for (QToolBar* bar : m_pageBars) {
        bar->show();
    }
}

QByteArray LibraryPlace::dockState(int version) const {
    // Brought back for a moment: the state has to be written in the version the window asks for.
    if (isShown()) {
        m_window.restoreState(m_docks);
    }
    return m_window.saveState(version);
}

bool LibraryPlace::openSketch(const QString& path) {
    if (!m_files.mayLeave() || !m_files.open(path)) {
        return false;
    }
    showPage();
    return true;
}

bool LibraryPlace::startPage(Sketch sketch) {
    if (!m_files.mayLeave()) {
        return false;
    }
    m_document.startNew(std::move(sketch));
    m_workplace.session.markUnsaved();
    showPage();
    m_workplace.say(tr("A new page from your sketch. The sketch itself stays as it is."));
    return true;
}

void LibraryPlace::showPage() {
    show->setChecked(false);
}

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#pragma once

#include <QMainWindow>
#include <optional>

#include "app/files/open_work.h"
#include "app/parts/parts.h"
#include "app/window/workplace.h"

class QDockWidget;
class QStackedWidget;

namespace matwright::app {

class Canvas;
class FileActions;
class FileFlow;
class LibraryPlace;
class PhotoActions;
class PhotoPlace;
class PlanPlace;
class PrintsPlace;
class EditActions;
class ArrangeActions;
class SettingActions;
class StatusLine;
class ToolActions;
class ViewActions;

// The window: the canvas in the middle, the tray on its left, the panels on its right, and every
// command in the menus. It only puts the parts together; what they do is theirs.
class MainWindow final : public QMainWindow {
    Q_OBJECT

  public:
    // All of them outlive the window.
    MainWindow(OpenWork& work, SettingsStore& settings, Questions& questions,
               QString partsFolder = standardPartsFolder());

    Canvas& canvas() { return *m_canvas; }
    FileFlow& files() { return *m_files; }
    StatusLine& statusLine() { return *m_status; }
    LibraryPlace& library() { return *m_library; }
    PhotoPlace& photos() { return *m_photos; }

    // Opens the template window, without waiting for it; tells where that part is missing.
    void showTemplate();

  protected:
    void closeEvent(QCloseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    void makeCentre();
    void makeDocks();
    QDockWidget* addDock(const QString& name, const QString& title, Qt::DockWidgetArea area);
    // What comes right after the first paint, so that the window is there sooner: the panels (their
    // docks hold the room for them), a look at the clipboard, the window's icon.
    void comeAlive();
    void fillDocks();
    static void hideBehindTabs(const QDockWidget& dock, QWidget& panel);
    void makeActions();
    void makeMenus();
    void makeToolBar();
    void addNextStepBar();
    void connectParts();
    // Shows the dock and puts the keyboard into it.
    void showPiece();
    void showDock(QDockWidget& dock);
    void showContextMenu(QPoint globalPos);
    void showTrayMenu(QPoint globalPos);
    void fillPhotoDock();
    // Documents are opened, photos and folders come into the tray.
    void takeFiles(const QStringList& paths, std::optional<PieceId> slot);
    // Once the drop is over: the file manager waits for its end, and there may be a question.
    void takeFilesLater(const QStringList& paths, std::optional<PieceId> slot);
    void showTitle();
    void restorePlace();
    void keepPlace();

    OpenWork& m_work;
    SettingsStore& m_settings;
    const QString m_partsFolder;
    StatusLine* m_status;
    Workplace m_workplace;
    Canvas* m_canvas = nullptr;
    QStackedWidget* m_centre = nullptr;
    FileFlow* m_files = nullptr;
    LibraryPlace* m_library = nullptr;
    PhotoPlace* m_photos = nullptr;
    PrintsPlace* m_prints = nullptr;
    PlanPlace* m_plans = nullptr;
    QDockWidget* m_trayDock = nullptr;
    QDockWidget* m_photoDock = nullptr;
    QDockWidget* m_pieceDock = nullptr;
    QDockWidget* m_pageDock = nullptr;
    QDockWidget* m_checksDock = nullptr;
    bool m_isPainted = false;
    QList<QDockWidget*> m_docks;

    FileActions* m_fileActions = nullptr;
    EditActions* m_editActions = nullptr;
    ViewActions* m_viewActions = nullptr;
    SettingActions* m_settingActions = nullptr;
    ToolActions* m_toolActions = nullptr;
    ArrangeActions* m_arrangeActions = nullptr;
    PhotoActions* m_photoActions = nullptr;
};

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#include "app/window/main_window.h"

#include <QCloseEvent>
#include <QDialog>
#include <QDir>
#include <QDockWidget>
#include <QHBoxLayout>
#include <QMenuBar>
#include <QScreen>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTimer>
#include <QToolBar>
#include <QToolButton>
#include <QVBoxLayout>
#include <utility>

#include "app/canvas/canvas.h"
#include "app/canvas/page_view.h"
#include "app/files/paths.h"
#include "app/panels/checks_panel.h"
#include "app/panels/page_panel.h"
#include "app/panels/piece_panel.h"
#include "app/panels/tray_panel.h"
#include "app/photos/photo_commands.h"
#include "app/photos/photo_tray_panel.h"
#include "app/printing/template_part.h"
#include "app/window/arrange_actions.h"
#include "app/window/edit_actions.h"
#include "app/window/file_actions.h"
#include "app/window/help_actions.h"
#include "app/window/icons.h"
#include "app/window/library_place.h"
#include "app/window/next_step_button.h"
#include "app/window/next_step_line.h"
#include "app/window/photo_actions.h"
#include "app/window/photo_place.h"
#include "app/window/plan_place.h"
#include "app/window/prints_place.h"
#include "app/window/setting_actions.h"
#include "app/window/status_line.h"
#include "app/window/tool_actions.h"
#include "app/window/view_actions.h"

namespace matwright::app {
namespace {

const QString geometryKey = QStringLiteral("geometry");
const QString docksKey = QStringLiteral("docks");
constexpr int docksVersion = 4;  // count up when docks or toolbars change

}  // namespace

// A dock behind another tab counts as shown for Qt, only outside the window: Tab would go through
// everything in it unseen.
void MainWindow::hideBehindTabs(const QDockWidget& dock, QWidget& panel) {
    QSizePolicy policy = panel.sizePolicy();
    policy.setRetainSizeWhenHidden(true);  // so that changing tabs moves nothing
    panel.setSizePolicy(policy);
    panel.setVisible(dock.geometry().intersects(dock.parentWidget()->rect()));
    QObject::connect(&dock, &QDockWidget::visibilityChanged, &panel, &QWidget::setVisible);
}

MainWindow::MainWindow(OpenWork& work, SettingsStore& settings, Questions& questions,
                       QString partsFolder)
    : m_work(work),
      m_settings(settings),
      m_partsFolder(std::move(partsFolder)),
      m_status(new StatusLine(*statusBar())),
      m_workplace{work.session, settings, questions,
                  [this](const QString& sentence) { m_status->say(sentence); }} {
    makeCentre();
    makeDocks();
    makeActions();
    makeMenus();
    makeToolBar();
    connectParts();
    showTitle();
    restorePlace();
    m_canvas->setFocus();
}

void MainWindow::makeCentre() {
    m_canvas = new Canvas(m_work.session, m_settings);
    auto* centre = new QWidget;
    auto* layout = new QVBoxLayout(centre);
    layout->setContentsMargins({});
    layout->setSpacing(0);
    layout->addWidget(new NextStepLine(m_work.session));
    layout->addWidget(m_canvas, 1);
    centre->setFocusProxy(m_canvas);
    m_centre = new QStackedWidget;
    m_centre->addWidget(centre);
    setCentralWidget(m_centre);
}

void MainWindow::makeDocks() {
    setTabPosition(Qt::AllDockWidgetAreas, QTabWidget::North);
    m_trayDock = addDock(QStringLiteral("tray"), tr("&Tray"), Qt::LeftDockWidgetArea);
    m_photoDock = addDock(QStringLiteral("photos"), tr("P&hotos"), Qt::LeftDockWidgetArea);
    m_pieceDock = addDock(QStringLiteral("piece"), tr("&Piece"), Qt::RightDockWidgetArea);
    m_pageDock = addDock(QStringLiteral("page"), tr("Pa&ge"), Qt::RightDockWidgetArea);
    m_checksDock = addDock(QStringLiteral("checks"), tr("&Checks"), Qt::RightDockWidgetArea);
    tabifyDockWidget(m_trayDock, m_photoDock);
    m_trayDock->raise();
    tabifyDockWidget(m_pieceDock, m_pageDock);
    m_pieceDock->raise();
    resizeDocks({m_trayDock, m_pieceDock}, {280, 290}, Qt::Horizontal);
    resizeDocks({m_pieceDock, m_checksDock}, {3, 1}, Qt::Vertical);
}

QDockWidget* MainWindow::addDock(const QString& name, const QString& title,
                                 Qt::DockWidgetArea area) {
    auto* dock = new QDockWidget(this);
    QString plain = title;
    dock->setWindowTitle(plain.remove(u'&'));
    dock->setObjectName(name);
    dock->setFeatures(QDockWidget::DockWidgetClosable | QDockWidget::DockWidgetMovable);
    dock->setWidget(new QWidget);
    dock->toggleViewAction()->setText(title);
    addDockWidget(area, dock);
    m_docks.append(dock);
    return dock;
}

void MainWindow::comeAlive() {
    fillDocks();
    m_editActions->lookAtClipboard();
    setWindowIcon(programIcon());
}

void MainWindow::fillDocks() {
    auto* tray = new TrayPanel(m_settings);
    connect(tray, &TrayPanel::placeRequested, m_canvas, &Canvas::place);
    auto* checks = new ChecksPanel(m_work.session, m_settings);
    connect(checks, &ChecksPanel::revealRequested, m_canvas, &Canvas::reveal);
    connect(checks, &ChecksPanel::countChanged, m_status, &StatusLine::showFindings);
    auto* piece = new PiecePanel(m_work.session, m_settings);
    connect(piece, &PiecePanel::cropRequested, m_prints->crop, &QAction::trigger);
    piece->useKnownPapers(m_plans->knownPapers());
    const std::pair<QDockWidget*, QWidget*> contents[] = {
        {m_trayDock, tray},
        {m_pieceDock, piece},
        {m_pageDock, new PagePanel(m_work.session, m_settings)},
        {m_checksDock, checks}};
    for (const auto& [dock, panel] : contents) {
        delete dock->widget();
        dock->setWidget(panel);
        hideBehindTabs(*dock, *panel);
    }
    fillPhotoDock();
}

void MainWindow::paintEvent(QPaintEvent* event) {
    QMainWindow::paintEvent(event);
    if (!std::exchange(m_isPainted, true)) {
        // Not 0, which would still come before the painted window is shown.
        QTimer::singleShot(1, this, &MainWindow::comeAlive);
    }
}

void MainWindow::makeActions() {
    m_files =
        new FileFlow(m_workplace, m_work.document, m_work.autosave, m_work.recoveryFolder, this);
    m_fileActions = new FileActions(*m_files, m_settings, *this);
    m_editActions = new EditActions(m_workplace, this);
    m_viewActions = new ViewActions(m_workplace, *m_canvas);
    m_settingActions = new SettingActions(m_workplace, this);
    m_toolActions = new ToolActions(*m_canvas);
    m_arrangeActions = new ArrangeActions(m_workplace, this);
    connect(m_fileActions->makeTemplate, &QAction::triggered, this, &MainWindow::showTemplate);
    m_photos = new PhotoPlace(m_workplace, m_work.document, m_partsFolder, this);
    m_photoActions = new PhotoActions(m_workplace, *m_photos, this);
    const auto suggestedName = [this] {
        return QDir(m_files->folderToStartIn()).filePath(m_work.document.shownName());
    };
    m_prints = new PrintsPlace(m_workplace, m_photos->access(), *m_canvas, m_partsFolder,
                               suggestedName, this);
    const auto pageFile = [this] {
        return m_work.document.needsName() ? QString() : m_work.document.path();
    };
    m_plans = new PlanPlace(m_workplace, m_photos->access(), m_partsFolder, suggestedName, pageFile,
                            this);
    m_canvas->showPhotos(m_photos->access(), [this](PieceId slot) {
        const std::string jpeg = m_work.document.keptPictures().find(m_work.session.making(), slot);
        return QImage::fromData(QByteArray::fromStdString(jpeg), "JPG");
    });
    m_library =
        new LibraryPlace(m_workplace, *m_files, m_work.document, *m_centre, *this, m_partsFolder);
}

void MainWindow::makeMenus() {
    m_fileActions->addTo(*menuBar()->addMenu(tr("&File")));
    QMenu* edit = menuBar()->addMenu(tr("&Edit"));
    m_editActions->addTo(*edit);
    QMenu* view = menuBar()->addMenu(tr("&View"));
    view->addAction(m_library->show);
    view->addSeparator();
    m_viewActions->addTo(*view);
    view->addSeparator();
    m_settingActions->addTo(*view);
    view->addSeparator();
    QMenu* panels = view->addMenu(tr("&Panels"));
    for (QDockWidget* dock : m_docks) {
        panels->addAction(dock->toggleViewAction());
    }
    QMenu* draw = menuBar()->addMenu(tr("&Draw"));
    m_toolActions->addTo(*draw);
    QMenu* arrange = menuBar()->addMenu(tr("&Arrange"));
    m_arrangeActions->addTo(*arrange);
    QMenu* photo = menuBar()->addMenu(tr("&Photo"));
    m_prints->addTo(*photo);
    m_photoActions->addTo(*photo);
    QMenu* plan = menuBar()->addMenu(tr("Pla&n"));
    m_plans->addTo(*plan);
    QMenu* help = menuBar()->addMenu(tr("&Help"));
    (new HelpActions(*menuBar(), *this))->addTo(*help);
    for (QMenu* menu : {edit, panels, draw, arrange, photo, plan}) {
        m_library->addForPageOnly(*menu);
    }
    m_library->addMenuBefore(help->menuAction());
}

void MainWindow::makeToolBar() {
    QToolBar* bar = addToolBar(tr("Tools"));
    bar->setObjectName(QStringLiteral("tools"));
    bar->setMovable(false);
    bar->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    bar->setIconSize({24, 24});
    bar->addActions(
        {m_library->show, m_fileActions->startNew, m_fileActions->open, m_fileActions->save});
    bar = addToolBar(tr("Page"));
    bar->setObjectName(QStringLiteral("page-tools"));
    bar->setMovable(false);
    bar->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    bar->setIconSize({24, 24});
    m_library->addForPageOnly(*bar);
    bar->addActions({m_editActions->undo, m_editActions->redo});
    bar->addSeparator();
    m_toolActions->addTo(*bar);
    bar->addSeparator();
    bar->addActions({m_viewActions->fitPage, m_viewActions->zoomIn, m_viewActions->zoomOut});
    addNextStepBar();
}

void MainWindow::addNextStepBar() {
    QToolBar* bar = addToolBar(tr("Next step"));
    m_library->addForPageOnly(*bar);
    bar->setObjectName(QStringLiteral("next-step"));
    bar->setMovable(false);
    bar->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    bar->setIconSize({24, 24});
    // A bar that has too little room still shows its first widget, and this is the only one.
    auto* room = new QWidget;
    auto* row = new QHBoxLayout(room);
    row->setContentsMargins({});
    row->addStretch(1);
    auto* later = new QToolButton;
    later->setDefaultAction(m_fileActions->makeTemplate);
    later->setToolButtonStyle(bar->toolButtonStyle());
    auto* prints = new NextStepButton(*m_prints->prints, QStringLiteral("photo"));
    auto* button = new NextStepButton(*m_fileActions->makeTemplate, QStringLiteral("template"));
    for (QToolButton* one :
         {later, static_cast<QToolButton*>(prints), static_cast<QToolButton*>(button)}) {
        one->setIconSize(bar->iconSize());
        one->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
        row->addWidget(one);
    }
    // Photos are printed before a page is laid out.
    const auto showStep = [this, later, prints, button] {
        const bool hasPhotos = !m_work.session.work().placements.empty();
        later->setVisible(hasPhotos);
        prints->setVisible(hasPhotos);
        button->setVisible(!hasPhotos);
    };
    connect(&m_work.session, &Session::changed, room, showStep);
    showStep();
    room->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    bar->addWidget(room);
}

void MainWindow::connectParts() {
    connect(m_canvas, &Canvas::hint, m_status, &StatusLine::say);
    connect(m_canvas, &Canvas::pointerMoved, this, [this](std::optional<Point> at) {
        m_status->showPointer(at, m_work.session.sketch().page, m_settings.value().scale);
    });
    connect(m_canvas, &Canvas::zoomChanged, m_status, &StatusLine::showZoom);
    m_status->showZoom(m_canvas->zoom());
    connect(m_status, &StatusLine::zoomChosen, m_canvas, &Canvas::setZoom);
    connect(m_canvas, &Canvas::contextMenuWanted, this, &MainWindow::showContextMenu);
    connect(m_canvas, &Canvas::pieceActivated, this, &MainWindow::showPiece);
    connect(m_status, &StatusLine::checksRequested, this, [this] { showDock(*m_checksDock); });
    connect(&m_work.autosave, &Autosave::failed, m_status, [this](const QString& sentence) {
        m_status->warn(tr("Unsaved work is not kept safe"), sentence);
    });
    connect(&m_work.autosave, &Autosave::safeAgain, m_status, &StatusLine::takeBackWarning);
    connect(&m_work.document, &SketchDocument::pathChanged, this, &MainWindow::showTitle);
    connect(&m_work.session, &Session::cleanChanged, this,
            [this](bool clean) { setWindowModified(!clean); });
    connect(&m_work.session, &Session::changed, this, [this](const Change& change) {
        if (change.has(Change::Photos) || change.has(Change::Papers)) {
            showTitle();  // a sketch may have become a page
        }
    });
    connect(&m_canvas->page(), &PageView::filesDropped, this, &MainWindow::takeFilesLater);
    setAcceptDrops(true);
}

void MainWindow::showTemplate() {
    finishTyping();
    const auto part = openPart<TemplatePart>(m_partsFolder, QStringLiteral("template"));
    if (!part) {
        m_workplace.questions.tell(tr("Templates cannot be made"), shownText(part.error()));
        return;
    }
    const QString name = QDir(m_files->folderToStartIn()).filePath(m_work.document.shownName());
    QDialog* dialog = (*part)->makeWindow(
        m_work.session.making(), m_settings, name, [this] { showDock(*m_checksDock); }, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void MainWindow::showDock(QDockWidget& dock) {
    dock.show();
    dock.raise();
    // The first control inside, past the scroll area around it.
    for (QWidget* next = dock.widget(); next && dock.isAncestorOf(next);
         next = next->nextInFocusChain()) {
        if (next->isVisible() && next->focusPolicy() & Qt::TabFocus) {
            next->setFocus(Qt::ShortcutFocusReason);
            return;
        }
    }
}

void MainWindow::showPiece() {
    m_pieceDock->show();
    m_pieceDock->raise();
    if (auto* panel = qobject_cast<PiecePanel*>(m_pieceDock->widget())) {
        panel->startOnName();
    }
}

void MainWindow::showContextMenu(QPoint globalPos) {
    QMenu menu;
    menu.addActions({m_editActions->cut, m_editActions->copy, m_editActions->paste,
                     m_editActions->duplicate, m_editActions->remove});
    menu.addSeparator();
    if (!selectedSlots(m_work.session).empty()) {
        m_prints->addForSlotTo(menu);
        m_photoActions->addForSlotTo(menu);
        menu.addSeparator();
    }
    m_arrangeActions->addMostUsedTo(menu);
    menu.exec(globalPos);
}

void MainWindow::showTitle() {
    // "[*]" is where Qt puts the mark of unsaved work; in a file's name it stands doubled.
    QString name = m_work.document.shownName();
    if (m_work.document.kind() == DocumentKind::Page) {
        name = tr("%1 (page)").arg(name);
    }
    name.replace(QStringLiteral("[*]"), QStringLiteral("[*][*]"));
    setWindowTitle(name + QStringLiteral("[*]"));
    setWindowModified(!m_work.session.isClean());
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!m_files->mayClose()) {
        event->ignore();
        return;
    }
    keepPlace();
    event->accept();
}

void MainWindow::restorePlace() {
    if (!restoreGeometry(m_settings.windowState(geometryKey))) {
        const QSize available = screen()->availableSize();
        resize((available * 0.92).boundedTo({1560, 1020}));
    }
    restoreState(m_settings.windowState(docksKey), docksVersion);
}

void MainWindow::keepPlace() {
    m_settings.setWindowState(geometryKey, saveGeometry());
    m_settings.setWindowState(docksKey, m_library->dockState(docksVersion));
}

}  // namespace matwright::app

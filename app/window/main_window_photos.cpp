// SPDX-License-Identifier: MIT
// What MainWindow has to do with photos: their dock, and files that are let go over the window.
#include <QDockWidget>
#include <QDropEvent>

#include "app/files/paths.h"
#include "app/photos/photo_mime.h"
#include "app/photos/photo_tray_panel.h"
#include "app/window/file_flow.h"
#include "app/window/main_window.h"
#include "app/window/photo_actions.h"
#include "app/window/photo_place.h"

namespace matwright::app {

void MainWindow::fillPhotoDock() {
    PhotoTrayPanel* panel = m_photos->makePanel(m_photoActions->adding());
    delete m_photoDock->widget();
    m_photoDock->setWidget(panel);
    hideBehindTabs(*m_photoDock, *panel);
    connect(m_photos, &PhotoPlace::trayWanted, m_photoDock, [this] {
        m_photoDock->show();
        m_photoDock->raise();
    });
    const PhotoTrayView& view = panel->view();
    connect(&view, &PhotoTrayView::choiceChanged, m_photoActions, &PhotoActions::updateEnabled);
    connect(&view, &PhotoTrayView::menuWanted, this, &MainWindow::showTrayMenu);
}

void MainWindow::showTrayMenu(QPoint globalPos) {
    QMenu menu;
    m_photoActions->addForTrayTo(menu);
    menu.exec(globalPos);
}

void MainWindow::takeFiles(const QStringList& paths, std::optional<PieceId> slot) {
    QStringList photos = paths;
    const auto isDocument = [](const QString& path) {
        return path.endsWith(suffixOf(DocumentKind::Sketch), Qt::CaseInsensitive) ||
               path.endsWith(suffixOf(DocumentKind::Page), Qt::CaseInsensitive);
    };
    photos.removeIf(isDocument);
    if (photos.isEmpty()) {  // one window shows one of them
        if (!paths.isEmpty() && m_files->mayLeave()) {
            m_files->open(paths.constFirst());
        }
        return;
    }
    m_photoDock->show();
    m_photoDock->raise();
    m_photos->add(photos, slot);
    if (photos.size() < paths.size()) {
        m_workplace.questions.tell(
            tr("The photos were taken, the document was not opened"),
            tr("The photos come into the tray of this page. To open a sketch or a page, drop it "
               "alone."));
    }
}

void MainWindow::takeFilesLater(const QStringList& paths, std::optional<PieceId> slot) {
    QMetaObject::invokeMethod(
        this, [this, paths, slot] { takeFiles(paths, slot); }, Qt::QueuedConnection);
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (photosFromMime(event->mimeData()).empty() && !filesFromMime(event->mimeData()).isEmpty()) {
        event->setDropAction(Qt::CopyAction);
        event->accept();
    }
}

void MainWindow::dropEvent(QDropEvent* event) {
    event->setDropAction(Qt::CopyAction);
    event->accept();
    takeFilesLater(filesFromMime(event->mimeData()), {});
}

// A drive may have been plugged in, or files moved, while the person was elsewhere.
void MainWindow::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::ActivationChange && isActiveWindow() && m_photos) {
        m_photos->lookAgain();
    }
}

}  // namespace matwright::app

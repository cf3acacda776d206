// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <optional>

#include "app/files/sketch_document.h"
#include "app/photos/photo_access.h"
#include "app/photos/photo_care.h"
#include "app/photos/photo_intake.h"
#include "app/photos/watched_folder.h"
#include "app/window/workplace.h"

namespace matwright::app {

class PhotoTrayPanel;

// Photos in the window: the way to the service that reads them, what brings them in, and the tray.
// Nothing of it opens the part before there is a photo.
class PhotoPlace final : public QObject {
    Q_OBJECT

  public:
    PhotoPlace(Workplace workplace, SketchDocument& document, QString partsFolder, QObject* parent);
    ~PhotoPlace() override;

    PhotoAccess& access() { return m_access; }
    PhotoIntake& intake() { return m_intake; }

    // The tray, once the panels are made.
    PhotoTrayPanel* makePanel(const QList<QAction*>& add);
    PhotoTrayPanel* panel() const { return m_panel; }

    // Whether the photos are where they were, once the tray is there.
    void lookAgain();

    void chooseAndAdd();
    void chooseAndAddFolder();
    void chooseWatchedFolder();
    void stopWatching();
    // Files and folders from elsewhere; the first photo goes into the slot.
    void add(const QStringList& paths, std::optional<PieceId> slot = {});
    // Asks for the file of a photo that is not where it was, and looks for others beside it.
    void askWhere(PhotoId photo);
    // Looks through a folder for every photo that is missing.
    void searchFolder();

    // Not where it was seen last, or another picture is there, or it cannot be read.
    bool isOutOfReach(PhotoId photo) const;

    // The photos that commands of the tray work on.
    std::vector<PhotoId> chosen() const;

  signals:
    // Photos that a person asked for are on their way into the tray.
    void trayWanted();

  private:
    void watchAsSet();
    QImage standInFor(PhotoId photo) const;
    void takeInstead(PhotoId photo, const LookedAt& file);
    QString folderToStartIn() const;

    Workplace m_workplace;
    SketchDocument& m_document;
    PhotoAccess m_access;
    PhotoIntake m_intake;
    PhotoCare m_care;
    WatchedFolder m_watched;
    PhotoTrayPanel* m_panel = nullptr;
    QString m_lastFolder;
};

}  // namespace matwright::app

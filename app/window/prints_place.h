// SPDX-License-Identifier: MIT
#pragma once

#include <QAction>
#include <QMenu>
#include <QObject>

#include "app/photos/photo_access.h"
#include "app/window/workplace.h"

namespace matwright::app {

class Canvas;
class PrintsPart;

// What is done with the photos in the slots: cropped, printed, shown. Opens the part "prints" on
// first use.
class PrintsPlace final : public QObject {
    Q_OBJECT

  public:
    // `suggestedName` gives a path without a suffix. All outlive this.
    PrintsPlace(Workplace workplace, PhotoAccess& access, Canvas& canvas, QString partsFolder,
                std::function<QString()> suggestedName, QWidget* window);

    // For the Photo menu, and for a right click on a slot.
    void addTo(QMenu& menu) const;
    void addForSlotTo(QMenu& menu) const;

    QAction* const crop;
    QAction* const moveInside;
    QAction* const prints;
    QAction* const pagePicture;

  private:
    PrintsPart* part();
    // The one selected slot with a photo.
    std::optional<PieceId> slotWithPhoto() const;
    void updateEnabled();
    void showCrop();
    void showPrints();
    void showPagePicture();
    void open(QDialog* dialog);

    Workplace m_workplace;
    PhotoAccess& m_access;
    Canvas& m_canvas;
    const QString m_partsFolder;
    std::function<QString()> m_suggestedName;
    QWidget* m_window;
};

}  // namespace matwright::app

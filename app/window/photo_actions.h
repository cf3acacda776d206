// SPDX-License-Identifier: MIT
#pragma once

#include <QAction>
#include <QMenu>
#include <QObject>

#include "app/window/photo_place.h"
#include "app/window/workplace.h"

namespace matwright::app {

// The Photo menu: photos into the tray, into the slots and out again.
class PhotoActions final : public QObject {
    Q_OBJECT

  public:
    PhotoActions(Workplace workplace, PhotoPlace& place, QObject* parent);

    void addTo(QMenu& menu);
    // What the tray's Add button offers.
    QList<QAction*> adding() const;
    // What a right click in the tray offers, and on a slot.
    void addForTrayTo(QMenu& menu);
    void addForSlotTo(QMenu& menu);
    // The chosen photos of the tray are others now.
    void updateEnabled();

    QAction* const add;
    QAction* const addFolder;
    QAction* const watchFolder;
    QAction* const stopWatching;
    QAction* const put;
    QAction* const fill;
    QAction* const takeOut;
    QAction* const swap;
    QAction* const turnPhoto;
    QAction* const turnSlot;
    QAction* const favourite;
    QAction* const focal;
    QAction* const where;
    QAction* const search;
    QAction* const remove;

  private:
    void connectAll();
    std::optional<PhotoId> photoInQuestion() const;
    void onSelectedSlot(QString (*act)(Session&, PieceId));

    Workplace m_workplace;
    PhotoPlace& m_place;
};

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#pragma once

#include <QListView>
#include <vector>

#include "app/photos/photo_tray_model.h"

namespace matwright::app {

// The photos as cells that wrap into rows. The mouse drags one to a slot, Enter and a double click
// put it into the next one; files and folders from elsewhere can be dropped here.
class PhotoTrayView final : public QListView {
    Q_OBJECT

  public:
    explicit PhotoTrayView(PhotoTrayModel& model, QWidget* parent = nullptr);

    // The selected photos, in the order of the tray.
    std::vector<PhotoId> selectedPhotos() const;
    PhotoId currentPhoto() const { return m_model.idAt(currentIndex()); }

  signals:
    void placeRequested(matwright::PhotoId photo);
    void removeRequested();
    void filesDropped(const QStringList& paths);
    void choiceChanged();
    void menuWanted(QPoint globalPos);

  protected:
    bool event(QEvent* event) override;
    void startDrag(Qt::DropActions actions) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void selectionChanged(const QItemSelection& selected, const QItemSelection& before) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

  private:
    PhotoTrayModel& m_model;
};

}  // namespace matwright::app

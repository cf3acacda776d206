// SPDX-License-Identifier: MIT
#include "app/photos/photo_tray_view.h"

#include <QContextMenuEvent>
#include <QDrag>
#include <QMimeData>
#include <QPainter>
#include <algorithm>

#include "app/photos/photo_mime.h"
#include "app/photos/photo_tray_delegate.h"

namespace matwright::app {

PhotoTrayView::PhotoTrayView(PhotoTrayModel& model, QWidget* parent)
    : QListView(parent), m_model(model) {
    setModel(&model);
    setItemDelegate(new PhotoTrayDelegate(this));
    setAccessibleName(tr("Photos"));
    setViewMode(QListView::IconMode);
    setMovement(QListView::Static);
    setResizeMode(QListView::Adjust);
    setUniformItemSizes(true);
    setLayoutMode(QListView::Batched);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setSelectionRectVisible(true);
    setDragEnabled(true);
    setAcceptDrops(true);
    setDropIndicatorShown(false);
    setMouseTracking(true);
    setFrameShape(QFrame::NoFrame);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setBackgroundRole(QPalette::Window);
    connect(this, &QListView::doubleClicked, this,
            [this](const QModelIndex& index) { emit placeRequested(m_model.idAt(index)); });
}

std::vector<PhotoId> PhotoTrayView::selectedPhotos() const {
    QModelIndexList rows = selectedIndexes();
    std::ranges::sort(rows, {}, &QModelIndex::row);
    std::vector<PhotoId> photos;
    for (const QModelIndex& row : rows) {
        photos.push_back(m_model.idAt(row));
    }
    return photos;
}

void PhotoTrayView::startDrag(Qt::DropActions) {
    if (!currentIndex().isValid()) {
        return;
    }
    constexpr int shown = 96;
    auto* drag = new QDrag(this);
    drag->setMimeData(m_model.mimeData({currentIndex()}));
    const QImage picture = m_model.thumbnailAt(currentIndex());
    if (!picture.isNull()) {
        drag->setPixmap(QPixmap::fromImage(
            picture.scaled(shown, shown, Qt::KeepAspectRatio, Qt::SmoothTransformation)));
        drag->setHotSpot(drag->pixmap().rect().center());
    }
    drag->exec(Qt::CopyAction);
}

// Delete belongs to the tray while it has the keyboard, not to the pieces on the page.
bool PhotoTrayView::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Delete) {
        event->accept();
        return true;
    }
    return QListView::event(event);
}

void PhotoTrayView::keyPressEvent(QKeyEvent* event) {
    const QModelIndex before = currentIndex();
    switch (event->key()) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (before.isValid()) {
                emit placeRequested(m_model.idAt(before));
            }
            return;
        case Qt::Key_Delete:
            emit removeRequested();
            return;
        case Qt::Key_Right:
        case Qt::Key_Left: {  // on into the next row, as reading goes
            const int row = before.row() + (event->key() == Qt::Key_Right ? 1 : -1);
            if (event->modifiers() == Qt::NoModifier && row >= 0 && row < m_model.rowCount()) {
                setCurrentIndex(m_model.index(row));
                return;
            }
            break;
        }
        default:
            break;
    }
    QListView::keyPressEvent(event);
}

void PhotoTrayView::focusInEvent(QFocusEvent* event) {
    QListView::focusInEvent(event);
    if (!currentIndex().isValid() && event->reason() != Qt::MouseFocusReason) {
        setCurrentIndex(m_model.index(0));
    }
}

void PhotoTrayView::contextMenuEvent(QContextMenuEvent* event) {
    const bool isByMouse = event->reason() == QContextMenuEvent::Mouse;
    emit menuWanted(isByMouse ? event->globalPos()
                              : viewport()->mapToGlobal(visualRect(currentIndex()).center()));
}

void PhotoTrayView::dragEnterEvent(QDragEnterEvent* event) {
    if (event->source() != this && !filesFromMime(event->mimeData()).isEmpty()) {
        event->setDropAction(Qt::CopyAction);
        event->accept();
    } else {
        event->ignore();
    }
}

void PhotoTrayView::dragMoveEvent(QDragMoveEvent* event) {
    event->setDropAction(Qt::CopyAction);
    event->accept();
}

void PhotoTrayView::dropEvent(QDropEvent* event) {
    emit filesDropped(filesFromMime(event->mimeData()));
    event->setDropAction(Qt::CopyAction);
    event->accept();
}

void PhotoTrayView::paintEvent(QPaintEvent* event) {
    QListView::paintEvent(event);
    if (m_model.rowCount() == 0) {
        QPainter painter(viewport());
        painter.setPen(palette().color(QPalette::WindowText));
        painter.drawText(viewport()->rect().adjusted(16, 16, -16, -16),
                         Qt::AlignCenter | Qt::TextWordWrap,
                         tr("No photos yet.\n\nDrag photos or a folder here, or choose Add."));
    }
    if (hasFocus() && m_model.rowCount() == 0) {
        QPainter painter(viewport());
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
        painter.drawRect(viewport()->rect().adjusted(1, 1, -1, -1));
    }
}

void PhotoTrayView::selectionChanged(const QItemSelection& selected, const QItemSelection& before) {
    QListView::selectionChanged(selected, before);
    emit choiceChanged();
}

void PhotoTrayView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QListView::currentChanged(current, previous);
    emit choiceChanged();
}

}  // namespace matwright::app

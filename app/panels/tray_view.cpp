// SPDX-License-Identifier: MIT
#include "app/panels/tray_view.h"

#include <QDrag>
#include <QKeyEvent>
#include <QWheelEvent>

#include "app/editing/piece_mime.h"
#include "app/panels/piece_changes.h"
#include "app/panels/tray_delegate.h"

namespace matwright::app {

TrayModel::TrayModel(std::vector<ReadyPiece> ready, QObject* parent)
    : QAbstractListModel(parent), m_ready(std::move(ready)) {}

const ReadyPiece& TrayModel::at(const QModelIndex& index) const {
    return m_ready[static_cast<std::size_t>(index.row())];
}

void TrayModel::setMatted(bool matted) {
    for (ReadyPiece& ready : m_ready) {
        ready.piece.mats.clear();
        if (matted) {
            ready.piece = withOneMoreMat(std::move(ready.piece));
        }
    }
    if (!m_ready.empty()) {
        emit dataChanged(index(0), index(rowCount() - 1));
    }
}

int TrayModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_ready.size());
}

QVariant TrayModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    switch (role) {
        case Qt::DisplayRole:
            return at(index).caption;
        case Qt::AccessibleTextRole:
            return at(index).description;
        case Qt::ToolTipRole:
            return tr("%1\nDrag it onto the page, or double-click it.").arg(at(index).description);
        default:
            return {};
    }
}

Qt::ItemFlags TrayModel::flags(const QModelIndex& index) const {
    return index.isValid() ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsDragEnabled |
                                 Qt::ItemNeverHasChildren
                           : Qt::NoItemFlags;
}

QStringList TrayModel::mimeTypes() const {
    return {QString::fromLatin1(piecesMimeType)};
}

QMimeData* TrayModel::mimeData(const QModelIndexList& indexes) const {
    std::vector<Piece> pieces;
    for (const QModelIndex& index : indexes) {
        pieces.push_back(at(index).piece);
    }
    return pieces.empty() ? nullptr : toMime(pieces);
}

TrayView::TrayView(std::vector<ReadyPiece> ready, double pixelsPerInch, QWidget* parent)
    : QListView(parent),
      m_model(new TrayModel(std::move(ready), this)),
      m_pixelsPerInch(pixelsPerInch) {
    setModel(m_model);
    setItemDelegate(new TrayDelegate(pixelsPerInch, this));
    setViewMode(QListView::IconMode);
    setMovement(QListView::Static);
    setResizeMode(QListView::Adjust);
    setDragEnabled(true);
    setDragDropMode(QAbstractItemView::DragOnly);
    setDropIndicatorShown(false);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setSelectionRectVisible(false);
    setMouseTracking(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    viewport()->setBackgroundRole(QPalette::Window);
    connect(this, &QListView::doubleClicked, this,
            [this](const QModelIndex& index) { emit placeRequested(m_model->at(index).piece); });
}

QPixmap TrayView::dragPicture(const QModelIndex& index) const {
    return picturedPiece(m_model->at(index).piece, m_pixelsPerInch, devicePixelRatioF());
}

void TrayView::startDrag(Qt::DropActions) {
    const QModelIndex index = currentIndex();
    if (!index.isValid()) {
        return;
    }
    auto* drag = new QDrag(this);
    drag->setMimeData(m_model->mimeData({index}));
    const QPixmap picture = dragPicture(index);
    drag->setPixmap(picture);
    drag->setHotSpot(QRect({}, picture.deviceIndependentSize().toSize()).center());
    drag->exec(Qt::CopyAction);
}

void TrayView::keyPressEvent(QKeyEvent* event) {
    const QModelIndex before = currentIndex();
    switch (event->key()) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (before.isValid()) {
                emit placeRequested(m_model->at(before).piece);
            }
            return;
        case Qt::Key_Down:
            QListView::keyPressEvent(event);
            if (currentIndex() == before) {
                emit leftDownwards();
            }
            return;
        case Qt::Key_Up:
            QListView::keyPressEvent(event);
            if (currentIndex() == before) {
                emit leftUpwards();
            }
            return;
        case Qt::Key_Right:
        case Qt::Key_Left: {  // on into the next row, as reading goes
            const int row = before.row() + (event->key() == Qt::Key_Right ? 1 : -1);
            if (row >= 0 && row < m_model->rowCount()) {
                setCurrentIndex(m_model->index(row));
            }
            return;
        }
        default:
            QListView::keyPressEvent(event);
    }
}

void TrayView::focusInEvent(QFocusEvent* event) {
    QListView::focusInEvent(event);
    if (!currentIndex().isValid() && event->reason() != Qt::MouseFocusReason) {
        setCurrentIndex(m_model->index(0));
    }
    viewport()->update();
}

void TrayView::focusOutEvent(QFocusEvent* event) {
    QListView::focusOutEvent(event);
    viewport()->update();
}

// The panel around scrolls, not this list, which is as tall as its content.
void TrayView::wheelEvent(QWheelEvent* event) {
    event->ignore();
}

void TrayView::updateGeometries() {
    QListView::updateGeometries();
    const int tall = contentsSize().height() + 2;
    if (tall != height()) {
        setFixedHeight(tall);
    }
}

QSize TrayView::sizeHint() const {
    return {260, qMax(60, contentsSize().height() + 2)};
}

QSize TrayView::minimumSizeHint() const {
    return {180, 60};
}

}  // namespace matwright::app

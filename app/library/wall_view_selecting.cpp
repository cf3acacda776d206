// SPDX-License-Identifier: MIT
// The wall: keys, mouse and what is selected.
#include <QDrag>
#include <QDragEnterEvent>
#include <QKeyEvent>
#include <QMimeData>
#include <QMouseEvent>
#include <QPixmap>
#include <algorithm>

#include "app/library/wall_view.h"

namespace matwright::app {
namespace {

bool comesFromOutside(const QDropEvent& event) {
    return event.mimeData()->hasUrls() && event.source() == nullptr;
}

}  // namespace

std::vector<int> WallView::selectedRows() const {
    std::vector<int> rows;
    for (const QItemSelectionRange& range : selectionModel()->selection()) {
        for (int row = range.top(); row <= range.bottom(); ++row) {
            rows.push_back(row);
        }
    }
    std::ranges::sort(rows);
    return rows;
}

std::vector<std::string> WallView::selectedPaths() const {
    std::vector<std::string> paths;
    for (const int row : selectedRows()) {
        paths.push_back(m_model.path(row));
    }
    return paths;
}

void WallView::select(const std::vector<std::string>& paths) {
    std::vector<int> rows;
    for (const std::string& path : paths) {
        if (const auto row = m_model.rowOf(path)) {
            rows.push_back(*row);
        }
    }
    std::ranges::sort(rows);
    selectRows(rows);
    if (!rows.empty()) {
        const QModelIndex first = m_model.index(rows.front());
        selectionModel()->setCurrentIndex(first, QItemSelectionModel::NoUpdate);
        scrollTo(first);
    }
    viewport()->update();
}

void WallView::selectRows(const std::vector<int>& rows) {
    QItemSelection selection;
    for (std::size_t i = 0; i < rows.size();) {
        std::size_t end = i + 1;
        while (end < rows.size() && rows[end] <= rows[end - 1] + 1) {
            ++end;
        }
        selection.append(QItemSelectionRange(m_model.index(rows[i]), m_model.index(rows[end - 1])));
        i = end;
    }
    selectionModel()->select(selection, QItemSelectionModel::ClearAndSelect);
}

void WallView::setSelection(const QRect& rect, QItemSelectionModel::SelectionFlags command) {
    if (m_model.rowCount() == 0) {
        return;
    }
    QItemSelection selection;
    if (state() == DragSelectingState) {
        const QRect band = rect.normalized();
        viewport()->update(m_band.united(band).adjusted(-2, -2, 2, 2));
        m_band = band;
        const auto [first, last] = rowsIn(band);
        for (int row = first; row < last; ++row) {
            if (cellRect(row).intersects(band)) {
                selection.select(m_model.index(row), m_model.index(row));
            }
        }
    } else if (rect.width() == 1 && rect.height() == 1) {
        if (const auto row = rowAt(rect.topLeft())) {
            selection.select(m_model.index(*row), m_model.index(*row));
        }
    } else {
        // From where a range began to where it goes now; both may lie out of sight.
        const int a = nearestRow(rect.topLeft());
        const int b = nearestRow(rect.bottomRight());
        selection.select(m_model.index(std::min(a, b)), m_model.index(std::max(a, b)));
    }
    selectionModel()->select(selection, command);
}

QRegion WallView::visualRegionForSelection(const QItemSelection& selection) const {
    QRegion region;
    const auto [first, last] = rowsIn(viewport()->rect());
    for (int row = first; row < last; ++row) {
        if (selection.contains(m_model.index(row))) {
            region += cellRect(row);
        }
    }
    return region;
}

void WallView::selectionChanged(const QItemSelection& selected, const QItemSelection& deselected) {
    QAbstractItemView::selectionChanged(selected, deselected);
    if (!m_isSwapping) {
        emit selectionShown();
    }
}

QModelIndex WallView::moveCursor(CursorAction action, Qt::KeyboardModifiers /*modifiers*/) {
    const int count = m_model.rowCount();
    if (count == 0) {
        return {};
    }
    if (!currentIndex().isValid()) {
        return m_model.index(0);
    }
    const int row = currentIndex().row();
    const int page = std::max(1, viewport()->height() / m_cell.size().height()) * columns();
    const auto moved = [&](int by) {
        // Up and down stay in their column, and where they are at the ends.
        const int to = row + by;
        const bool isOff = to < 0 || to >= count;
        const bool hasLast = by > 0 && row / columns() < (count - 1) / columns();
        return m_model.index(!isOff ? to : hasLast ? count - 1 : row);
    };
    switch (action) {
        case MoveLeft:
        case MovePrevious:
            return m_model.index(std::max(0, row - 1));
        case MoveRight:
        case MoveNext:
            return m_model.index(std::min(count - 1, row + 1));
        case MoveUp:
            return moved(-columns());
        case MoveDown:
            return moved(columns());
        case MovePageUp:
            return m_model.index(row < page ? row % columns() : row - page);
        case MovePageDown:
            return moved(page);
        case MoveHome:
            return m_model.index(0);
        case MoveEnd:
            return m_model.index(count - 1);
    }
    return currentIndex();
}

void WallView::keyPressEvent(QKeyEvent* event) {
    const bool isPlain = !(event->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier));
    const QString text = event->text();
    const bool isReturn = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isPlain && !text.isEmpty() && text.at(0).isPrint() && text != QStringLiteral(" ")) {
        emit typed(text);
        return;
    }
    if (isReturn && currentIndex().isValid()) {
        emit activated(currentIndex());
        return;
    }
    QAbstractItemView::keyPressEvent(event);
}

void WallView::mouseMoveEvent(QMouseEvent* event) {
    QAbstractItemView::mouseMoveEvent(event);
    const QPoint at = event->position().toPoint();
    const int row = rowAt(at).value_or(-1);
    const bool isOverAlike =
        row >= 0 && m_cell.alikeRect(cellRect(row), m_model.alike(row)).contains(at);
    viewport()->setCursor(isOverAlike ? Qt::PointingHandCursor : Qt::ArrowCursor);
    if (row != m_hovered) {
        for (const int changed : {row, m_hovered}) {
            if (changed >= 0) {
                viewport()->update(cellRect(changed));
            }
        }
        m_hovered = row;
    }
}

void WallView::leaveEvent(QEvent* event) {
    QAbstractItemView::leaveEvent(event);
    if (m_hovered >= 0) {
        viewport()->update(cellRect(std::exchange(m_hovered, -1)));
    }
}

void WallView::mouseReleaseEvent(QMouseEvent* event) {
    QAbstractItemView::mouseReleaseEvent(event);
    if (!m_band.isNull()) {
        viewport()->update(m_band.adjusted(-2, -2, 2, 2));
        m_band = {};
        return;
    }
    const QPoint at = event->position().toPoint();
    const auto row = rowAt(at);
    if (event->button() == Qt::LeftButton && row &&
        m_cell.alikeRect(cellRect(*row), m_model.alike(*row)).contains(at)) {
        emit familyWanted(*row);
    }
}

void WallView::startDrag(Qt::DropActions /*actions*/) {
    const QModelIndexList indexes = selectedIndexes();
    if (indexes.isEmpty()) {
        return;
    }
    auto* drag = new QDrag(this);
    drag->setMimeData(m_model.mimeData(indexes));
    const QImage picture = m_thumbnails.findAnySize(m_model.content(indexes.first().row()));
    if (!picture.isNull()) {
        drag->setPixmap(QPixmap::fromImage(picture.scaled(96, 96, Qt::KeepAspectRatio)));
    }
    drag->exec(Qt::CopyAction, Qt::CopyAction);
}

void WallView::dragEnterEvent(QDragEnterEvent* event) {
    dragMoveEvent(event);
}

void WallView::dragMoveEvent(QDragMoveEvent* event) {
    if (comesFromOutside(*event)) {
        event->setDropAction(Qt::CopyAction);
        event->accept();
    } else {
        event->ignore();
    }
}

void WallView::dropEvent(QDropEvent* event) {
    if (!comesFromOutside(*event)) {
        event->ignore();
        return;
    }
    event->setDropAction(Qt::CopyAction);
    event->accept();
    setState(NoState);
    emit filesDropped(event->mimeData()->urls());
}

}  // namespace matwright::app

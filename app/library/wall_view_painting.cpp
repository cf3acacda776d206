// SPDX-License-Identifier: MIT
#include <QEvent>
#include <QPaintEvent>
#include <QPainter>

#include "app/library/wall_view.h"

namespace matwright::app {

CellState WallView::stateOf(int row) const {
    const QModelIndex index = m_model.index(row);
    CellState state;
    state.entry = m_model.entry(row);
    state.alike = m_model.alike(row);
    state.picture = m_thumbnails.find(state.entry.content, pictureSidePixels());
    if (state.picture.isNull()) {
        state.picture = m_thumbnails.findAnySize(state.entry.content);
    }
    state.hasFailed = state.picture.isNull() && m_thumbnails.hasFailed(state.entry.content);
    state.isSelected = selectionModel()->isSelected(index);
    state.isCurrent = hasFocus() && currentIndex() == index;
    state.isHovered = row == m_hovered;
    return state;
}

void WallView::paintEvent(QPaintEvent* event) {
    QPainter painter(viewport());
    const auto [first, last] = rowsIn(event->rect());
    for (int row = first; row < last; ++row) {
        const QRect cell = cellRect(row);
        if (event->region().intersects(cell)) {
            m_cell.paint(painter, cell, stateOf(row), palette());
        }
    }
    paintBand(painter);
}

void WallView::paintBand(QPainter& painter) {
    if (m_band.isNull()) {
        return;
    }
    QColor inside = palette().color(QPalette::Highlight);
    painter.setPen(inside);
    inside.setAlpha(40);
    painter.setBrush(inside);
    painter.drawRect(m_band);
}

void WallView::changeEvent(QEvent* event) {
    QAbstractItemView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        m_cell = WallCell(font(), m_cell.pictureSide());
        updateGeometries();
    }
}

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
// The drag in progress, the tool in hand, and what the pointer is over.
#include <utility>

#include "app/canvas/edge_scroll.h"
#include "app/canvas/hit_test.h"
#include "app/canvas/page_view.h"

namespace matwright::app {

Pointer PageView::pointerAt(QPointF view, Qt::KeyboardModifiers modifiers) const {
    return {view, m_viewport.toPage(view), modifiers};
}

void PageView::useTool(std::unique_ptr<Tool> tool) {
    cancelDrag();
    m_tool = std::move(tool);
    refreshOverlay();  // other handles
    updateCursor();
    emit hint(m_tool->hint(m_pointer, m_handles));
}

void PageView::startDrag(std::unique_ptr<Drag> drag, const Pointer& at, Qt::MouseButton button) {
    m_drag = std::move(drag);
    m_press = at;
    m_dragButton = button;
    m_hasMoved = false;
    updateCursor();
}

void PageView::updateDrag(const Pointer& now) {
    if (m_drop) {
        m_drop->update(now);
    } else if (m_drag && m_hasMoved) {
        m_drag->update(now);
    }
    watchEdges();
}

void PageView::watchEdges() {
    const bool scrolls = m_drop || (isDragging() && m_drag->scrollsAtEdges());
    if (!scrolls || edgeScrollStep(m_pointer.view, viewRect()).isNull()) {
        m_edgeTimer.stop();
    } else if (!m_edgeTimer.isActive()) {
        m_edgeTimer.start(edgeDwellMs);
    }
}

void PageView::scrollAtEdge() {
    m_edgeTimer.setInterval(edgeStepMs);
    scrollBy(edgeScrollStep(m_pointer.view, viewRect()));  // takes the drag along
    m_pointer = pointerAt(m_pointer.view, m_pointer.modifiers);
    emit pointerMoved(m_pointer.page);
}

void PageView::finishDrag() {
    const auto drag = std::move(m_drag);
    m_edgeTimer.stop();
    m_dragButton = Qt::NoButton;
    const quint64 before = m_session.revision();
    m_isPerforming = true;
    if (std::exchange(m_hasMoved, false)) {
        drag->finish();
    } else {
        m_tool->click(m_press);
    }
    m_isPerforming = false;
    showPreview({});
    updateCursor();
    if (m_tool->isForOneUse() && m_session.revision() != before) {
        emit toolDone();
    }
}

bool PageView::cancelDrag() {
    if (!m_drag && !m_drop) {
        return false;
    }
    m_edgeTimer.stop();
    m_drop.reset();
    if (const auto drag = std::move(m_drag); drag && m_hasMoved) {
        drag->abort();
    }
    m_dragButton = Qt::NoButton;
    m_hasMoved = false;
    showPreview({});
    updateCursor();
    return true;
}

void PageView::scrollTo(const Viewport& viewport) {
    setViewport(viewport);
}

void PageView::perform(const Edit& edit, const QString& label, bool selectAdded, int gesture) {
    const bool outer = std::exchange(m_isPerforming, true);
    const auto done = selectAdded ? m_session.performAndSelectAdded(edit, label)
                                  : m_session.perform(edit, label, gesture);
    m_isPerforming = outer;
    if (!done) {
        emit hint(QString::fromStdString(done.error().text()));
    }
}

void PageView::hoverAt(const Pointer& at) {
    const PieceId id = topPieceAt(m_session.sketch(), at.page, m_viewport.toLength(pickReach));
    if (std::exchange(m_hovered, id) != id) {
        refreshOverlay();
    }
    updateCursor();
    emit hint(m_tool->hint(at, m_handles));
}

void PageView::updateCursor() {
    Qt::CursorShape shape = m_tool->cursor(m_pointer, m_handles);
    if (m_drag) {
        shape = m_drag->cursor();
    } else if (m_isSpaceHeld) {
        shape = Qt::OpenHandCursor;
    }
    if (cursor().shape() != shape) {
        setCursor(shape);
    }
}

std::optional<Rect> PageView::extent() const {
    if (m_preview.extent) {
        return m_preview.extent;
    }
    std::optional<Rect> extent;
    for (const PieceId id : m_session.selection()) {
        const Rect bounds = trimBounds(m_session.sketch().pieces.at(id));
        extent = extent ? extent->united(bounds) : bounds;
    }
    return extent;
}

}  // namespace matwright::app

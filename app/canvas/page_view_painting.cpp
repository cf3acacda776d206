// SPDX-License-Identifier: MIT
// What PageView shows: cached layers, the pieces of a drag in progress, the overlay.
#include <QPaintEvent>
#include <QPainter>

#include "app/canvas/drags/move_drag.h"
#include "app/canvas/marks.h"
#include "app/canvas/padlock.h"
#include "app/canvas/page_view.h"

namespace matwright::app {

namespace {

constexpr QColor hintColour(84, 94, 104);  // on white paper: 6.6:1

}  // namespace

QRegion PageView::previewRegion() const {
    QRegion region;
    for (const auto& [id, piece] : m_preview.changed) {
        region += paintedRect(piece, m_viewport);
    }
    for (const Piece& piece : m_preview.added) {
        region += paintedRect(piece, m_viewport);
    }
    for (const auto& [id, placement] : m_preview.placed) {
        // The slot itself may just have gone.
        if (matwright::find(m_session.sketch(), id) || m_preview.changed.contains(id)) {
            region += paintedRect(shownPiece(id), m_viewport);
        }
    }
    return region;
}

void PageView::showPreview(Preview preview) {
    if (preview.isEmpty() && m_preview.isEmpty()) {
        return;
    }
    QRegion touched = previewRegion();
    std::set<PieceId> lifted;
    for (const auto& entry : preview.changed) {
        lifted.insert(entry.first);
    }
    for (const auto& entry : preview.placed) {
        lifted.insert(entry.first);
    }
    if (preview.placed.empty() != m_preview.placed.empty()) {
        preview.placed.empty() ? m_slotPictures.stopMoving()
                               : m_slotPictures.startMoving(preview.placed.begin()->first);
    }
    const bool wasLifting = m_layers.isLifting();
    const bool isEmptyPage = m_session.sketch().pieces.empty();
    m_preview = std::move(preview);
    if (m_preview.changed.empty() && m_preview.added.empty()) {
        m_pictures.clear();
    }
    m_layers.lift(std::move(lifted));
    if (wasLifting != m_layers.isLifting()) {
        for (const PieceId id : m_session.selection()) {
            touched += paintedRect(m_session.sketch().pieces.at(id), m_viewport);
        }
    }
    touched += previewRegion();
    if (isEmptyPage) {
        touched += rect();
    }
    refreshOverlay(touched);
    emit extentChanged();
}

const Piece& PageView::shownPiece(PieceId id) const {
    const auto moved = m_preview.changed.find(id);
    return moved != m_preview.changed.end() ? moved->second : m_session.sketch().pieces.at(id);
}

Overlay PageView::builtOverlay() {
    Overlay overlay(viewRect(), font());
    const Sketch& sketch = m_session.sketch();
    const auto shown = [this](PieceId id) -> const Piece& { return shownPiece(id); };
    const auto& selection = m_session.selection();
    if (m_hovered != PieceId{} && !selection.contains(m_hovered) && !m_drag &&
        matwright::find(sketch, m_hovered)) {
        addPieceFrame(overlay, shown(m_hovered), m_viewport, Overlay::Ink::Hover);
        if (shown(m_hovered).locked) {
            overlay.addPadlock(padlockPlace(shown(m_hovered), m_viewport));
        }
    }
    bool anyMovable = false;
    for (const PieceId id : selection) {
        const Piece& piece = shown(id);
        anyMovable = anyMovable || !piece.locked;
        if ((selection.size() > 1 && !isDragging()) || piece.locked) {
            addPieceFrame(overlay, piece, m_viewport, Overlay::Ink::Selection);
        }
        if (piece.locked) {
            overlay.addPadlock(padlockPlace(piece, m_viewport));
        }
    }
    m_handles = {};
    if (m_tool->slotInHand() && matwright::find(sketch, *m_tool->slotInHand())) {
        addPieceFrame(overlay, shown(*m_tool->slotInHand()), m_viewport, Overlay::Ink::Target);
    } else if (anyMovable && !isDragging()) {
        const PieceId only = m_session.onlySelected();
        m_handles = only != PieceId{} ? handlesOf(shown(only), m_viewport, viewRect())
                                      : handlesOf(boxAround(movableSelection(m_session)).outermost,
                                                  m_viewport, viewRect());
        addHandles(overlay, m_handles);
    }
    if (m_preview.target && matwright::find(sketch, *m_preview.target)) {
        addPieceFrame(overlay, shown(*m_preview.target), m_viewport, Overlay::Ink::Target);
    }
    if (m_preview.band) {
        overlay.addBand(m_viewport.toView(*m_preview.band));
    }
    addMeasures(overlay, m_preview, m_viewport, viewRect(), m_settings.value().scale);
    return overlay;
}

void PageView::refreshOverlay(QRegion alsoUpdate) {
    alsoUpdate += m_overlay.region();
    m_overlay = builtOverlay();
    alsoUpdate += m_overlay.region();
    if (!alsoUpdate.isEmpty()) {
        update(alsoUpdate);
    }
}

void PageView::paintEvent(QPaintEvent* event) {
    m_layers.prepare(m_session.sketch(), m_viewport, size(), devicePixelRatioF());
    QPainter painter(this);
    m_layers.drawUnder(painter, event->region());
    paintPreview(painter, event->region());
    if (m_session.sketch().pieces.empty() && m_preview.added.empty()) {
        paintEmptyHint(painter);
    }
    m_overlay.paint(painter);
    if (hasFocus()) {
        paintFocusFrame(painter);
    }
}

void PageView::paintPreview(QPainter& painter, const QRegion& area) {
    for (const PageLayers::Run& run : m_layers.runs()) {
        for (std::size_t i = 0; i < run.lifted.size(); ++i) {
            const PieceId id = run.lifted[i];
            if (const auto placed = m_preview.placed.find(id); placed != m_preview.placed.end()) {
                paintDressed(painter, id, shownPiece(id), &placed->second, m_viewport, m_dress);
                continue;
            }
            m_pictures.paint(painter, id.value, m_preview.changed.at(id), run.numbers[i],
                             m_viewport, m_layers.labels());
        }
        m_layers.drawOver(painter, area, run);
    }
    std::size_t number = m_session.sketch().pieces.size();
    std::int64_t key = 0;
    for (const Piece& piece : m_preview.added) {
        m_pictures.paint(painter, --key, piece, ++number, m_viewport, m_layers.labels());
    }
}

void PageView::paintEmptyHint(QPainter& painter) const {
    const QRectF page =
        m_viewport.toView(pages(m_session.sketch().page).front()).adjusted(24, 24, -24, -24);
    painter.save();
    QFont larger = font();
    larger.setPointSizeF(larger.pointSizeF() > 0 ? larger.pointSizeF() + 2 : 12);
    painter.setFont(larger);
    painter.setPen(hintColour);
    painter.drawText(page, Qt::AlignCenter | Qt::TextWordWrap,
                     tr("Drag a photo slot from the left onto the page, or double-click one."));
    painter.restore();
}

void PageView::paintFocusFrame(QPainter& painter) const {
    painter.save();
    painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    painter.restore();
}

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
// The events of PageView: mouse, wheel, keys, drag and drop.
#include <QApplication>
#include <QContextMenuEvent>
#include <QDropEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <cmath>

#include "app/canvas/drags/drop_drag.h"
#include "app/canvas/drags/pan_drag.h"
#include "app/canvas/drags/photo_drags.h"
#include "app/canvas/hit_test.h"
#include "app/canvas/page_view.h"
#include "app/editing/piece_mime.h"
#include "app/photos/photo_mime.h"

namespace matwright::app {

namespace {

// How far a press may stray and still be a click.
constexpr double clickSlack = 4;
constexpr double zoomPerNotch = 1.2;
constexpr double pixelsPerNotch = 60;

}  // namespace

void PageView::mousePressEvent(QMouseEvent* event) {
    if (m_drag) {
        return;  // a second button does not disturb a drag
    }
    m_pointer = pointerAt(event->position(), event->modifiers());
    const bool pans =
        event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && m_isSpaceHeld);
    if (pans) {
        startDrag(std::make_unique<PanDrag>(dragHost(), m_pointer), m_pointer, event->button());
    } else if (event->button() == Qt::LeftButton) {
        startDrag(m_tool->press(m_pointer, m_handles), m_pointer, event->button());
    }
}

void PageView::mouseMoveEvent(QMouseEvent* event) {
    m_pointer = pointerAt(event->position(), event->modifiers());
    emit pointerInView(m_pointer.view);
    emit pointerMoved(m_pointer.page);
    if (!m_drag) {
        hoverAt(m_pointer);
        return;
    }
    if (!(event->buttons() & m_dragButton)) {
        cancelDrag();  // it was let go where no event came from
        return;
    }
    if (!m_hasMoved) {
        const QPointF off = m_pointer.view - m_press.view;
        m_hasMoved = std::hypot(off.x(), off.y()) >= clickSlack;
    }
    updateDrag(m_pointer);
}

void PageView::mouseReleaseEvent(QMouseEvent* event) {
    if (!m_drag || event->button() != m_dragButton) {
        return;
    }
    m_pointer = pointerAt(event->position(), event->modifiers());
    updateDrag(m_pointer);
    if (!m_hasMoved && event->button() == Qt::MiddleButton) {
        cancelDrag();
    } else {
        finishDrag();
    }
    hoverAt(m_pointer);
}

void PageView::mouseDoubleClickEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) {
        return;
    }
    hoverAt(pointerAt(event->position(), event->modifiers()));
    const PieceId id = m_session.onlySelected();
    if (id != PieceId{} && m_hovered != PieceId{}) {
        activate(id);
    }
}

void PageView::activate(PieceId id) {
    if (m_session.work().placements.contains(id)) {
        if (!m_tool->slotInHand()) {
            emit photoActivated(id);
        }
    } else {
        emit pieceActivated(id);
    }
}

void PageView::wheelEvent(QWheelEvent* event) {
    if (!m_drag && !event->modifiers().testFlag(Qt::ControlModifier) &&
        m_tool->wheel(pointerAt(event->position(), event->modifiers()),
                      event->angleDelta().y() / 120.0)) {
        event->accept();
        return;
    }
    const QPointF pixels = event->pixelDelta().isNull()
                               ? QPointF(event->angleDelta()) / 120 * pixelsPerNotch
                               : QPointF(event->pixelDelta());
    if (event->modifiers().testFlag(Qt::ControlModifier)) {
        const double notches = event->angleDelta().y() / 120.0;
        zoomTo(zoom() * std::pow(zoomPerNotch, notches), event->position());
    } else if (event->modifiers().testFlag(Qt::ShiftModifier)) {
        scrollBy(pixels.transposed());
    } else {
        scrollBy(pixels);
    }
    event->accept();
}

bool PageView::event(QEvent* event) {
    if (event->type() == QEvent::NativeGesture) {
        const auto* gesture = static_cast<QNativeGestureEvent*>(event);
        if (gesture->gestureType() == Qt::ZoomNativeGesture) {
            zoomTo(zoom() * (1 + gesture->value()), gesture->position());
            return true;
        }
    }
    if (event->type() == QEvent::ShortcutOverride) {
        // Space and the piece keys belong to the page while it has the focus.
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Space || (m_drag && key->key() == Qt::Key_Escape)) {
            event->accept();
        }
    }
    return QWidget::event(event);
}

void PageView::keyPressEvent(QKeyEvent* event) {
    const bool isModifier = event->key() == Qt::Key_Shift || event->key() == Qt::Key_Control ||
                            event->key() == Qt::Key_Alt;
    if (isModifier) {
        m_pointer.modifiers = event->modifiers();
        updateDrag(m_pointer);
        QWidget::keyPressEvent(event);
        return;
    }
    if (!m_drag && m_tool->key(*event)) {
        return;
    }
    if (event->key() == Qt::Key_Escape) {
        if (!cancelDrag()) {
            m_tool->isForOneUse() ? emit toolDone() : m_session.clearSelection();
        }
        return;
    }
    if (m_drag) {
        return;  // keys would change what is being dragged
    }
    if (event->key() == Qt::Key_Space && event->modifiers() == Qt::NoModifier) {
        m_isSpaceHeld = true;
        updateCursor();
        return;
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (m_tool->isForOneUse()) {
            emit pieceWanted();
        } else if (m_session.onlySelected() != PieceId{}) {
            activate(m_session.onlySelected());
        }
        return;
    }
    if (!m_keys.press(*event)) {
        if (!scrollByKey(*event)) {
            QWidget::keyPressEvent(event);
        }
        return;
    }
    if (const auto area = extent()) {
        reveal(*area);
    }
}

// What the wheel and the middle button do: the arrows where no piece takes them (nothing selected,
// or Alt held), a window's height with the page keys.
bool PageView::scrollByKey(const QKeyEvent& event) {
    const auto modifiers = event.modifiers() & ~Qt::KeypadModifier;
    const bool isPlain = modifiers == Qt::NoModifier || modifiers == Qt::AltModifier;
    const double far = height() - pixelsPerNotch;
    QPointF by;
    switch (event.key()) {
        case Qt::Key_Left:
            by.setX(pixelsPerNotch);
            break;
        case Qt::Key_Right:
            by.setX(-pixelsPerNotch);
            break;
        case Qt::Key_Up:
            by.setY(pixelsPerNotch);
            break;
        case Qt::Key_Down:
            by.setY(-pixelsPerNotch);
            break;
        case Qt::Key_PageUp:
            by.setY(far);
            break;
        case Qt::Key_PageDown:
            by.setY(-far);
            break;
        default:
            return false;
    }
    if (isPlain) {
        scrollBy(by);
    }
    return isPlain;
}

void PageView::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        m_isSpaceHeld = false;
        updateCursor();
        return;
    }
    if (event->key() == Qt::Key_Shift || event->key() == Qt::Key_Control ||
        event->key() == Qt::Key_Alt) {
        m_pointer.modifiers = event->modifiers();
        updateDrag(m_pointer);
    }
    QWidget::keyReleaseEvent(event);
}

bool PageView::focusNextPrevChild(bool next) {
    if (!m_drag && m_keys.step(next)) {
        if (const auto area = extent()) {
            reveal(*area);
        }
        return true;
    }
    return QWidget::focusNextPrevChild(next);
}

void PageView::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void PageView::focusOutEvent(QFocusEvent* event) {
    m_isSpaceHeld = false;
    QWidget::focusOutEvent(event);
    update();
}

void PageView::leaveEvent(QEvent*) {
    m_hovered = {};
    refreshOverlay();
    emit pointerInView(std::nullopt);
    emit pointerMoved(std::nullopt);
    emit hint({});
}

void PageView::contextMenuEvent(QContextMenuEvent* event) {
    if (m_drag || m_drop) {
        return;  // a menu would swallow the release that ends it
    }
    if (event->reason() == QContextMenuEvent::Mouse) {
        const Point at = m_viewport.toPage(QPointF(event->pos()));
        const PieceId id = topPieceAt(m_session.sketch(), at, m_viewport.toLength(pickReach));
        if (id != PieceId{} && !m_session.selection().contains(id)) {
            m_session.select({id});
        }
        emit contextMenuWanted(event->globalPos());
        return;
    }
    const auto area = extent();
    const QPointF at = area ? m_viewport.toView(*area).center() : viewRect().center();
    emit contextMenuWanted(mapToGlobal(at.toPoint()));
}

// Photos of the tray bring their files along for other programs, so they are looked for first.
std::unique_ptr<Drag> PageView::dropOf(const QMimeData* mime) {
    if (const auto photos = photosFromMime(mime); !photos.empty()) {
        return std::make_unique<PhotoDrop>(dragHost(), photos.front());
    }
    if (auto pieces = fromMime(mime); !pieces.empty()) {
        return std::make_unique<DropDrag>(dragHost(), std::move(pieces));
    }
    if (const QStringList files = filesFromMime(mime); !files.isEmpty()) {
        return std::make_unique<FileDrop>(
            dragHost(), files, [this](const QStringList& dropped, std::optional<PieceId> slot) {
                emit filesDropped(dropped, slot);
            });
    }
    return nullptr;
}

void PageView::dragEnterEvent(QDragEnterEvent* event) {
    auto drop = dropOf(event->mimeData());
    if (!drop) {
        return;
    }
    cancelDrag();
    m_drop = std::move(drop);
    event->setDropAction(Qt::CopyAction);
    event->accept();
}

void PageView::dragMoveEvent(QDragMoveEvent* event) {
    if (m_drop) {
        m_pointer = pointerAt(event->position(), event->modifiers());
        updateDrag(m_pointer);
        emit pointerInView(m_pointer.view);
        event->setDropAction(Qt::CopyAction);
        event->accept();
    }
}

void PageView::dragLeaveEvent(QDragLeaveEvent*) {
    cancelDrag();
}

void PageView::dropEvent(QDropEvent* event) {
    if (!m_drop) {
        return;
    }
    m_pointer = pointerAt(event->position(), event->modifiers());
    const auto drop = std::move(m_drop);
    m_edgeTimer.stop();
    drop->update(m_pointer);
    m_isPerforming = true;
    drop->finish();
    m_isPerforming = false;
    showPreview({});
    setFocus(Qt::MouseFocusReason);
    event->setDropAction(Qt::CopyAction);
    event->accept();
}

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
// The events of CropView: mouse, wheel, pinch, keys.
#include <QKeyEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <cmath>

#include "app/crop/crop_view.h"
#include "app/editing/session.h"

namespace matwright::app {

namespace {

constexpr double handleReach = 16;
constexpr Length smallStep = Length::inches(0, 1, 32);
constexpr Length largeStep = Length::inches(0, 1, 4);
constexpr int smallTurn = 100;  // millidegrees
constexpr int largeTurn = 1000;

}  // namespace

void CropView::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || m_drag != Drag::None) {
        return;
    }
    const QPointF off = event->position() - handleAt();
    m_press = event->position();
    m_pressShift = m_finalShift;
    m_start = m_crop;
    m_burst = Burst::None;
    m_gesture = Session::newGesture();
    m_drag = isShowingFinal()                              ? Drag::Final
             : std::hypot(off.x(), off.y()) <= handleReach ? Drag::Handle
                                                           : Drag::Photo;
    updateCursor(m_press);
}

void CropView::mouseMoveEvent(QMouseEvent* event) {
    if (m_drag == Drag::None) {
        updateCursor(event->position());
    } else {
        dragTo(event->position());
    }
}

void CropView::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || m_drag == Drag::None) {
        return;
    }
    dragTo(event->position());
    m_drag = Drag::None;
    updateCursor(event->position());
}

void CropView::wheelEvent(QWheelEvent* event) {
    event->accept();
    if (m_drag == Drag::None && !isShowingFinal()) {
        zoomAbout(std::pow(zoomPerNotch, event->angleDelta().y() / 120.0), event->position());
    }
}

bool CropView::event(QEvent* event) {
    if (event->type() == QEvent::NativeGesture) {
        const auto* gesture = static_cast<QNativeGestureEvent*>(event);
        if (gesture->gestureType() == Qt::ZoomNativeGesture && !isShowingFinal()) {
            zoomAbout(1 + gesture->value(), gesture->position());
            return true;
        }
        if (gesture->gestureType() == Qt::RotateNativeGesture && !isShowingFinal()) {
            turnBy(static_cast<int>(std::lround(gesture->value() * 1000)));
            return true;
        }
    }
    if (event->type() == QEvent::ShortcutOverride && m_drag != Drag::None &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        event->accept();
    }
    return QWidget::event(event);
}

void CropView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && cancelDrag()) {
        return;
    }
    if (m_drag != Drag::None || isShowingFinal() || !takeKey(*event)) {
        QWidget::keyPressEvent(event);
    }
}

bool CropView::takeKey(const QKeyEvent& event) {
    if (event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) {
        return false;
    }
    const bool large = event.modifiers().testFlag(Qt::ShiftModifier);
    const Length step = large ? largeStep : smallStep;
    const int turn = large ? largeTurn : smallTurn;
    switch (event.key()) {
        case Qt::Key_Left:
            moveBy({-step, {}});
            return true;
        case Qt::Key_Right:
            moveBy({step, {}});
            return true;
        case Qt::Key_Up:
            moveBy({{}, -step});
            return true;
        case Qt::Key_Down:
            moveBy({{}, step});
            return true;
        case Qt::Key_Plus:
        case Qt::Key_Equal:
            zoomBy(zoomPerNotch);
            return true;
        case Qt::Key_Minus:
            zoomBy(1 / zoomPerNotch);
            return true;
        case Qt::Key_BracketLeft:
            turnBy(-turn);
            return true;
        case Qt::Key_BracketRight:
            turnBy(turn);
            return true;
        case Qt::Key_BraceLeft:
            turnBy(-largeTurn);
            return true;
        case Qt::Key_BraceRight:
            turnBy(largeTurn);
            return true;
        case Qt::Key_Home:
            startAgain();
            return true;
        default:
            return false;
    }
}

void CropView::updateCursor(QPointF at) {
    const QPointF off = at - handleAt();
    const bool isHandle = m_drag == Drag::Handle || (m_drag == Drag::None && !isShowingFinal() &&
                                                     std::hypot(off.x(), off.y()) <= handleReach);
    const Qt::CursorShape shape = isHandle               ? Qt::SizeVerCursor
                                  : m_drag != Drag::None ? Qt::ClosedHandCursor
                                                         : Qt::OpenHandCursor;
    if (cursor().shape() != shape) {
        setCursor(shape);
    }
}

void CropView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    update();
}

}  // namespace matwright::app

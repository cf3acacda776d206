// SPDX-License-Identifier: MIT
#include "app/panels/typed_edit.h"

#include <QApplication>
#include <QKeyEvent>
#include <QPainter>
#include <QWheelEvent>

#include "app/panels/section.h"
#include "app/panels/tint.h"

namespace matwright::app {

TypedEdit::TypedEdit(QWidget* parent) : QLineEdit(parent) {
    setMinimumHeight(controlHeight);
}

void TypedEdit::setWrong(bool wrong) {
    m_wrong = wrong;
    update();
}

bool TypedEdit::leaveToWindow(const QKeyEvent& key) {
    return !isModified() && (key.matches(QKeySequence::Undo) || key.matches(QKeySequence::Redo));
}

bool TypedEdit::event(QEvent* event) {
    if (event->type() != QEvent::ShortcutOverride) {
        return QLineEdit::event(event);
    }
    auto& key = static_cast<QKeyEvent&>(*event);
    if (leaveToWindow(key)) {
        event->ignore();
        return false;
    }
    const bool handled = QLineEdit::event(event);
    // Esc while typing drops the typing; it must not reach a shortcut of the window.
    if (key.key() == Qt::Key_Escape && (isModified() || m_wrong)) {
        event->accept();
        return true;
    }
    // A shortcut is about to act (save, print): it must see what was typed here.
    const auto commanding = key.modifiers() & (Qt::ControlModifier | Qt::AltModifier);
    if (!event->isAccepted() && commanding && isModified()) {
        emit commitAsked();
        event->ignore();
    }
    return handled;
}

void TypedEdit::keyPressEvent(QKeyEvent* event) {
    const bool large = event->modifiers() & Qt::ShiftModifier;
    switch (event->key()) {
        case Qt::Key_Up:
            emit stepped(1, large);
            return;
        case Qt::Key_Down:
            emit stepped(-1, large);
            return;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (!isModified()) {
                event->ignore();  // the default button's turn
            }
            emit commitAsked();
            return;
        case Qt::Key_Escape:
            if (isModified() || m_wrong) {
                emit discardAsked();
            } else {
                event->ignore();
            }
            return;
        default:
            break;
    }
    if (leaveToWindow(*event)) {
        event->ignore();
        return;
    }
    QLineEdit::keyPressEvent(event);
}

void TypedEdit::wheelEvent(QWheelEvent* event) {
    if (!hasFocus() || isReadOnly()) {
        event->ignore();
        return;
    }
    constexpr int notch = 120;  // eighths of a degree: QWheelEvent's angleDelta of one notch
    m_wheelRest += event->angleDelta().y();
    const int count = m_wheelRest / notch;
    m_wheelRest -= count * notch;
    if (count != 0) {
        emit stepped(count, event->modifiers() & Qt::ShiftModifier);
    }
    event->accept();
}

void TypedEdit::focusInEvent(QFocusEvent* event) {
    QLineEdit::focusInEvent(event);
    m_selectOnRelease = event->reason() == Qt::MouseFocusReason;
    emit focused(m_selectOnRelease);
}

void TypedEdit::focusOutEvent(QFocusEvent* event) {
    QLineEdit::focusOutEvent(event);
    const QWidget* popup = QApplication::activePopupWidget();
    const bool ownMenu =
        event->reason() == Qt::PopupFocusReason && popup && popup->parentWidget() == this;
    if (!ownMenu) {
        emit left();
    }
}

void TypedEdit::mouseReleaseEvent(QMouseEvent* event) {
    QLineEdit::mouseReleaseEvent(event);
    // The first click takes the whole figure, so that typing replaces it.
    if (std::exchange(m_selectOnRelease, false) && !hasSelectedText()) {
        selectAll();
    }
}

void TypedEdit::paintEvent(QPaintEvent* event) {
    QLineEdit::paintEvent(event);
    if (!m_wrong) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(tintOf(palette(), Tint::Wrong), 2));
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 2, 2);
}

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#include "app/panels/typed_field.h"

#include <QAccessible>
#include <QVBoxLayout>

#include "app/editing/session.h"
#include "app/panels/tint.h"
#include "app/panels/typed_edit.h"

namespace matwright::app {

TypedField::TypedField(const QString& accessibleName, QWidget* parent)
    : QWidget(parent),
      m_edit(new TypedEdit(this)),
      m_error(new TintedLabel(Tint::Wrong, {}, this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    layout->addWidget(m_edit);
    layout->addWidget(m_error);
    m_error->hide();
    setFocusProxy(m_edit);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(accessibleName);
    m_edit->setAccessibleName(accessibleName);
    connect(m_edit, &TypedEdit::stepped, this, &TypedField::takeStep);
    connect(m_edit, &TypedEdit::commitAsked, this, &TypedField::commitTyped);
    connect(m_edit, &TypedEdit::discardAsked, this, &TypedField::discardTyped);
    connect(m_edit, &TypedEdit::focused, this, &TypedField::focusArrived);
    connect(m_edit, &TypedEdit::left, this, [this] {
        commitTyped();
        m_gesture = 0;
        if (!m_edit->isModified()) {
            clearError();
            showValue();
        }
    });
}

// A field that goes with the focus in it would still be asked for its text.
TypedField::~TypedField() {
    m_edit->disconnect(this);
}

QLineEdit* TypedField::lineEdit() const {
    return m_edit;
}

QString TypedField::errorText() const {
    return m_error->text();
}

void TypedField::setMixed() {
    const bool differs = !m_mixed;
    m_mixed = true;
    valueWasSet(differs);
}

void TypedField::showError(const QString& sentence) {
    m_error->setText(sentence);
    m_error->show();
    giveErrorRoom();
    m_edit->setWrong(true);
    m_edit->setToolTip(sentence);
    m_edit->setAccessibleDescription(sentence);
    QAccessibleEvent alert(m_error, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

// A wrapped sentence reports the height of a wide one; layouts would lay it over the field.
void TypedField::giveErrorRoom() {
    const int height = hasError() ? m_error->heightForWidth(width()) : 0;
    if (height != m_error->minimumHeight()) {
        m_error->setMinimumHeight(height);
    }
}

void TypedField::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    giveErrorRoom();
}

void TypedField::clearError() {
    if (!hasError()) {
        return;
    }
    m_error->clear();
    m_error->hide();
    m_error->setMinimumHeight(0);
    m_edit->setWrong(false);
    m_edit->setToolTip({});
    m_edit->setAccessibleDescription({});
}

void TypedField::commitTyped() {
    if (!m_edit->isModified()) {
        return;
    }
    m_gesture = 0;
    const QString typed = m_edit->text();
    if (typed.trimmed().isEmpty()) {
        discardTyped();
        return;
    }
    m_wasMixed = std::exchange(m_mixed, false);
    m_edit->setModified(false);
    clearError();
    if (const auto sentence = take(typed)) {
        m_mixed = m_wasMixed;
        m_edit->setText(typed);
        m_edit->setModified(true);
        showError(*sentence);
    } else if (hasError()) {  // the owner refused it: it stays to be mended, as wrong text does
        m_edit->setText(typed);
        m_edit->setModified(true);
    }
}

void TypedField::discardTyped() {
    clearError();
    showValue();
    if (m_edit->hasFocus()) {
        m_edit->selectAll();
    }
}

void TypedField::takeStep(int count, bool large) {
    commitTyped();
    if (!m_edit->isModified()) {
        clearError();  // of a refused step
    }
    if (m_mixed || hasError() || m_edit->isReadOnly()) {
        return;
    }
    m_stepping = true;
    step(count, large);
    m_stepping = false;
    if (!hasError()) {
        showValue();
    }
}

void TypedField::focusArrived(bool byMouse) {
    if (m_edit->isModified()) {
        return;
    }
    showValue();
    if (!byMouse) {
        m_edit->selectAll();
    }
}

void TypedField::valueWasSet(bool differs) {
    if (differs && !m_stepping) {
        m_gesture = 0;
    }
    if (!differs && m_edit->isModified()) {
        return;
    }
    clearError();
    showValue();
}

void TypedField::showValue() {
    const QString text = m_mixed ? QString() : m_edit->hasFocus() ? editingText() : restingText();
    m_edit->setPlaceholderText(m_mixed ? tr("differ") : QString());
    if (m_edit->text() != text) {
        m_edit->setText(text);
        if (!m_edit->hasFocus()) {
            m_edit->setCursorPosition(0);
        }
    }
    m_edit->setModified(false);
}

int TypedField::burst() {
    constexpr qint64 pauseMs = 1500;
    if (m_gesture == 0 || !m_sinceStep.isValid() || m_sinceStep.elapsed() > pauseMs) {
        m_gesture = Session::newGesture();
    }
    m_sinceStep.start();
    return m_gesture;
}

}  // namespace matwright::app

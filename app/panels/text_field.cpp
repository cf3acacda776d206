// SPDX-License-Identifier: MIT
#include "app/panels/text_field.h"

#include <QKeyEvent>
#include <algorithm>

#include "app/editing/session.h"
#include "app/panels/section.h"
#include "core/sketch/sketch.h"

namespace matwright::app {

namespace {

// A UTF-16 unit takes at most three bytes of UTF-8.
constexpr int maxUnits = static_cast<int>(maxTextBytes) / 3;

bool isWindowsUndo(QEvent* event) {
    const auto* key = static_cast<QKeyEvent*>(event);
    return key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo);
}

}  // namespace

int TypingBurst::gesture() {
    constexpr qint64 pauseMs = 2000;
    if (m_gesture == 0 || !m_sinceKey.isValid() || m_sinceKey.elapsed() > pauseMs) {
        m_gesture = Session::newGesture();
    }
    m_sinceKey.start();
    return m_gesture;
}

QString savableText(QString text, bool multiline) {
    text.truncate(maxUnits);
    std::ranges::replace_if(
        text,
        [multiline](QChar c) {
            const bool kept = multiline && c == QLatin1Char('\n');
            return !kept && (c.category() == QChar::Other_Control || c.unicode() >= 0xFFFE);
        },
        QLatin1Char(' '));
    return text;
}

template <typename Edit>
bool WordsField<Edit>::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && isWindowsUndo(event)) {
        event->ignore();
        return false;
    }
    return Edit::event(event);
}

template <typename Edit>
void WordsField<Edit>::keyPressEvent(QKeyEvent* event) {
    if (isWindowsUndo(event)) {
        event->ignore();
        return;
    }
    Edit::keyPressEvent(event);
}

template <typename Edit>
void WordsField<Edit>::focusOutEvent(QFocusEvent* event) {
    m_burst.end();
    Edit::focusOutEvent(event);
}

template class WordsField<QLineEdit>;
template class WordsField<QPlainTextEdit>;

TextField::TextField(QWidget* parent) : WordsField(parent) {
    setMaxLength(maxUnits);
    setMinimumHeight(controlHeight);
    connect(this, &QLineEdit::textEdited, this,
            [this](const QString& now) { emit typed(savableText(now, false), m_burst.gesture()); });
}

void TextField::showText(const QString& wanted, bool mixed) {
    setPlaceholderText(mixed ? tr("differ") : QString());
    if (text() != wanted) {
        m_burst.end();
        setText(wanted);
        if (!hasFocus()) {
            setCursorPosition(0);
        }
    }
}

NoteField::NoteField(QWidget* parent) : WordsField(parent) {
    setTabChangesFocus(true);
    setUndoRedoEnabled(false);
    setFixedHeight(fontMetrics().lineSpacing() * 3 + 14);
    connect(this, &QPlainTextEdit::textChanged, this, [this] {
        if (!m_showing) {
            emit typed(savableText(toPlainText(), true), m_burst.gesture());
        }
    });
}

void NoteField::showText(const QString& wanted, bool mixed) {
    setPlaceholderText(mixed ? tr("differ") : QString());
    if (toPlainText() != wanted) {
        m_burst.end();
        m_showing = true;
        setPlainText(wanted);
        m_showing = false;
    }
}

}  // namespace matwright::app

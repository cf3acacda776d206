// SPDX-License-Identifier: MIT
#pragma once

#include <QElapsedTimer>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace matwright::app {

// The gesture number of a run of typing: the same until a pause or until the focus moves on, so
// that undo takes back words, not letters.
class TypingBurst {
  public:
    int gesture();
    void end() { m_gesture = 0; }

  private:
    int m_gesture = 0;
    QElapsedTimer m_sinceKey;
};

// What people type or paste, made fit for a sketch: no control characters (line breaks stay where
// `multiline`), and short enough to be saved.
QString savableText(QString text, bool multiline);

// What both fields for words do with events: undo and redo are the window's, and leaving ends a run
// of typing.
template <typename Edit>
class WordsField : public Edit {
  protected:
    explicit WordsField(QWidget* parent) : Edit(parent) {}
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

    TypingBurst m_burst;
};

// One line of words. Every keystroke counts at once, so nothing typed is lost when a file is saved;
// undo and redo are the window's.
class TextField final : public WordsField<QLineEdit> {
    Q_OBJECT

  public:
    explicit TextField(QWidget* parent = nullptr);
    // Emits nothing; the cursor stays where the text is the same.
    void showText(const QString& text, bool mixed = false);

  signals:
    void typed(const QString& text, int gesture);
};

// The same for several lines; Tab leaves it.
class NoteField final : public WordsField<QPlainTextEdit> {
    Q_OBJECT

  public:
    explicit NoteField(QWidget* parent = nullptr);
    void showText(const QString& text, bool mixed = false);

  signals:
    void typed(const QString& text, int gesture);

  private:
    bool m_showing = false;
};

}  // namespace matwright::app

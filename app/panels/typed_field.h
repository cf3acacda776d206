// SPDX-License-Identifier: MIT
#pragma once

#include <QElapsedTimer>
#include <QString>
#include <QWidget>
#include <optional>

class QLineEdit;

namespace matwright::app {

class TintedLabel;
class TypedEdit;

// A field for a figure that is typed as people write it. Enter and leaving the field commit what
// was typed, Esc puts the old figure back, Up and Down step (Shift: by larger steps), the wheel
// steps while the field has the focus. Wrong text keeps the old value, stays to be mended under a
// red border, and is answered by a sentence beneath that assistive technology hears too.
//
// Setting a value from the program never emits anything.
class TypedField : public QWidget {
    Q_OBJECT

  public:
    explicit TypedField(const QString& accessibleName, QWidget* parent = nullptr);
    ~TypedField() override;

    QLineEdit* lineEdit() const;
    // Several pieces with different values: an empty field that says so until something is typed.
    bool isMixed() const { return m_mixed; }
    void setMixed();
    bool hasError() const { return !errorText().isEmpty(); }
    QString errorText() const;
    // For an owner that refuses a value: shows the sentence; the owner sets the kept value before.
    void showError(const QString& sentence);
    // Takes what has been typed, as Enter does; nothing typed changes nothing.
    void commitTyped();
    // Drops what has been typed, as Esc does.
    void discardTyped();

  protected:
    // What the field shows while nobody types, and what it shows to be edited.
    virtual QString restingText() const = 0;
    virtual QString editingText() const = 0;
    // Reads the text, takes and emits the value; a sentence where it cannot.
    virtual std::optional<QString> take(const QString& text) = 0;
    // Steps and emits; `count` is signed, `large` for Shift.
    virtual void step(int count, bool large) = 0;

    // Called by setters after they stored a value; `differs` from the one before. Text being typed
    // stays when the value is the same as before.
    void valueWasSet(bool differs);
    void clearMixed() { m_mixed = false; }
    // During take(): whether the field stood for several values before.
    bool wasMixed() const { return m_wasMixed; }
    // The gesture number of a burst of steps: the same for steps that follow each other closely.
    int burst();
    void showValue();
    void resizeEvent(QResizeEvent* event) override;

  private:
    void giveErrorRoom();
    void takeStep(int count, bool large);
    void focusArrived(bool byMouse);
    void clearError();

    TypedEdit* m_edit;
    TintedLabel* m_error;
    bool m_mixed = false;
    bool m_wasMixed = false;
    bool m_stepping = false;
    int m_gesture = 0;
    QElapsedTimer m_sinceStep;
};

}  // namespace matwright::app

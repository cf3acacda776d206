// SPDX-License-Identifier: MIT
#pragma once

#include <QLineEdit>

namespace matwright::app {

// The line edit inside a TypedField: turns keys, wheel and focus into the field's events and paints
// the red border. Undo belongs to the window as long as nothing is typed here.
class TypedEdit final : public QLineEdit {
    Q_OBJECT

  public:
    explicit TypedEdit(QWidget* parent);
    void setWrong(bool wrong);

  signals:
    void stepped(int count, bool large);
    void commitAsked();
    void discardAsked();
    void focused(bool byMouse);
    void left();

  protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    bool leaveToWindow(const QKeyEvent& key);

    bool m_wrong = false;
    bool m_selectOnRelease = false;
    int m_wheelRest = 0;
};

}  // namespace matwright::app

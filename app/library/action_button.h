// SPDX-License-Identifier: MIT
#pragma once

#include <QAction>
#include <QPushButton>

namespace matwright::app {

// A wide button that does what an action does, and is called and greyed like it. An action with a
// menu opens it.
class ActionButton final : public QPushButton {
    Q_OBJECT

  public:
    enum class Weight {
        Ordinary,
        Primary,  // in the accent colour: the one obvious next step
    };
    ActionButton(QAction& action, Weight weight, QWidget* parent = nullptr);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void showAction();

    QAction& m_action;
    Weight m_weight;
};

}  // namespace matwright::app

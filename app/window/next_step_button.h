// SPDX-License-Identifier: MIT
#pragma once

#include <QAction>
#include <QToolButton>

namespace matwright::app {

// A toolbar button in the accent colour: the one obvious next step.
class NextStepButton final : public QToolButton {
    Q_OBJECT

  public:
    // Shows `action`'s text; the icon is drawn in the colour of text on the accent.
    NextStepButton(QAction& action, const QString& iconName);

  protected:
    void paintEvent(QPaintEvent* event) override;
};

}  // namespace matwright::app

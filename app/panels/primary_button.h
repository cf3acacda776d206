// SPDX-License-Identifier: MIT
#pragma once

#include <QPushButton>

namespace matwright::app {

// The one obvious next step of a window, in the accent colour.
class PrimaryButton final : public QPushButton {
    Q_OBJECT

  public:
    explicit PrimaryButton(const QString& text, QWidget* parent = nullptr);

  protected:
    void paintEvent(QPaintEvent* event) override;
};

}  // namespace matwright::app

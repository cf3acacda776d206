// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>
#include <QLabel>

class QPalette;

namespace matwright::app {

// Text colours that stay readable on the palette's window colour: at least 4.5:1 (WCAG 2.1, 1.4.3)
// on the light and dark palettes of the Fusion style.
enum class Tint { Quiet, Wrong };
QColor tintOf(const QPalette& palette, Tint tint);

// A label in one of the tints that follows the palette when the theme changes. Wraps.
class TintedLabel : public QLabel {
    Q_OBJECT

  public:
    explicit TintedLabel(Tint tint, const QString& text = {}, QWidget* parent = nullptr);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void applyTint();

    Tint m_tint;
    bool m_applying = false;
};

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#include "app/panels/tint.h"

#include <QApplication>
#include <QEvent>
#include <QPalette>

namespace matwright::app {

namespace {

int mixed(int a, int b) {
    return (a * 3 + b) / 4;
}

}  // namespace

QColor tintOf(const QPalette& palette, Tint tint) {
    const QColor text = palette.color(QPalette::WindowText);
    const QColor window = palette.color(QPalette::Window);
    if (tint == Tint::Wrong) {
        return window.lightness() > 127 ? QColor(0xA8, 0x1C, 0x14) : QColor(0xFF, 0x9A, 0x90);
    }
    return {mixed(text.red(), window.red()), mixed(text.green(), window.green()),
            mixed(text.blue(), window.blue())};
}

TintedLabel::TintedLabel(Tint tint, const QString& text, QWidget* parent)
    : QLabel(text, parent), m_tint(tint) {
    setWordWrap(true);
    setTextFormat(Qt::PlainText);
    applyTint();
}

void TintedLabel::changeEvent(QEvent* event) {
    QLabel::changeEvent(event);
    const auto type = event->type();
    if (!m_applying && (type == QEvent::PaletteChange || type == QEvent::ApplicationPaletteChange ||
                        type == QEvent::ParentChange)) {
        applyTint();
    }
}

// The tint is derived from the surroundings' palette, never from our own, which holds the tint.
void TintedLabel::applyTint() {
    m_applying = true;
    const QPalette around = parentWidget() ? parentWidget()->palette() : QApplication::palette();
    QPalette own;
    own.setColor(QPalette::WindowText, tintOf(around, m_tint));
    setPalette(own);
    m_applying = false;
}

}  // namespace matwright::app

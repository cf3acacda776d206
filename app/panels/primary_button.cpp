// SPDX-License-Identifier: MIT
#include "app/panels/primary_button.h"

#include <QPainter>

namespace matwright::app {

PrimaryButton::PrimaryButton(const QString& text, QWidget* parent) : QPushButton(text, parent) {
    QFont strong = font();
    strong.setWeight(QFont::DemiBold);
    setFont(strong);
}

void PrimaryButton::paintEvent(QPaintEvent*) {
    const auto group = isEnabled() ? QPalette::Active : QPalette::Disabled;
    const QColor fill = palette().color(group, QPalette::Highlight);
    const QColor ink = palette().color(group, QPalette::HighlightedText);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(isDown() ? fill.darker(115) : underMouse() ? fill.lighter(108) : fill);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 5, 5);
    painter.setPen(ink);
    painter.drawText(rect(), Qt::AlignCenter | Qt::TextHideMnemonic, text());
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(ink, 2));
        painter.drawRoundedRect(QRectF(rect()).adjusted(3, 3, -3, -3), 3, 3);
    }
}

}  // namespace matwright::app

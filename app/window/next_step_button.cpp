// SPDX-License-Identifier: MIT
#include "app/window/next_step_button.h"

#include <QStyle>
#include <QStyleOptionToolButton>
#include <QStylePainter>

#include "app/window/icons.h"

namespace matwright::app {

NextStepButton::NextStepButton(QAction& action, const QString& iconName) {
    setText(action.iconText());
    setToolTip(action.toolTip());
    setStatusTip(action.statusTip());
    setIcon(lineIcon(iconName, QPalette::HighlightedText));
    setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    setFocusPolicy(Qt::TabFocus);
    connect(this, &QToolButton::clicked, &action, &QAction::trigger);
}

void NextStepButton::paintEvent(QPaintEvent*) {
    QStyleOptionToolButton option;
    initStyleOption(&option);
    const QColor accent = palette().color(QPalette::Highlight);
    const QColor onAccent = palette().color(QPalette::HighlightedText);
    QStylePainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(isDown() ? accent.darker(115) : accent);
    painter.drawRoundedRect(rect().adjusted(1, 1, -1, -1), 4, 4);
    if (hasFocus() || underMouse()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(onAccent, 2));
        painter.drawRoundedRect(QRectF(rect()).adjusted(4, 4, -4, -4), 2, 2);
    }
    option.palette.setColor(QPalette::ButtonText, onAccent);
    painter.drawControl(QStyle::CE_ToolButtonLabel, option);
}

}  // namespace matwright::app

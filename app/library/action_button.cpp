// SPDX-License-Identifier: MIT
#include "app/library/action_button.h"

#include <QMenu>
#include <QPainter>

namespace matwright::app {
namespace {

constexpr int ordinaryHeight = 30;
constexpr int primaryHeight = 38;

}  // namespace

ActionButton::ActionButton(QAction& action, Weight weight, QWidget* parent)
    : QPushButton(parent), m_action(action), m_weight(weight) {
    setMinimumHeight(weight == Weight::Primary ? primaryHeight : ordinaryHeight);
    setAutoDefault(false);
    if (action.menu()) {
        setMenu(action.menu());
    } else {
        connect(this, &QPushButton::clicked, &action, &QAction::trigger);
    }
    connect(&action, &QAction::changed, this, &ActionButton::showAction);
    showAction();
}

void ActionButton::showAction() {
    // Its letter belongs to the menu.
    setText(QString(m_action.text()).remove(u'&'));
    setToolTip(m_action.toolTip());
    setEnabled(m_action.isEnabled());
}

void ActionButton::paintEvent(QPaintEvent* event) {
    if (m_weight == Weight::Ordinary) {
        QPushButton::paintEvent(event);
        return;
    }
    QPainter painter(this);
    QFont strong = font();
    strong.setWeight(QFont::DemiBold);
    painter.setFont(strong);
    const QPalette::ColorRole ground = QPalette::Highlight;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    const QColor fill =
        palette().color(isEnabled() ? QPalette::Active : QPalette::Disabled, ground);
    painter.setBrush(isDown() ? fill.darker(115) : underMouse() ? fill.lighter(108) : fill);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 5, 5);
    painter.setPen(palette().color(isEnabled() ? QPalette::Active : QPalette::Disabled,
                                   QPalette::HighlightedText));
    painter.drawText(rect(), Qt::AlignCenter, text());
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(palette().color(QPalette::HighlightedText), 2));
        painter.drawRoundedRect(QRectF(rect()).adjusted(3, 3, -3, -3), 3, 3);
    }
}

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#include "app/library/choice_button.h"

#include <QPainter>
#include <utility>

#include "app/settings/palettes.h"

namespace matwright::app {
namespace {

constexpr int rowHeight = 28;
constexpr int tileHeight = 40;
constexpr int inset = 8;

}  // namespace

ChoiceButton::ChoiceButton(Form form, QString what, const QString& label, QWidget* parent)
    : QAbstractButton(parent), m_form(form), m_what(std::move(what)) {
    setText(label);
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_Hover);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    showUse();
}

QSize ChoiceButton::sizeHint() const {
    // The same whatever the count, so that nothing moves while one types.
    const int words = fontMetrics().horizontalAdvance(text());
    return m_form == Form::Tile ? QSize(40, tileHeight) : QSize(words + 2 * inset + 40, rowHeight);
}

void ChoiceButton::setCount(std::uint32_t count) {
    if (count != m_count) {
        m_count = count;
        update();
    }
    showUse();
}

void ChoiceButton::showUse() {
    setEnabled(m_count > 0 || isChecked());
    setAccessibleName(m_count == 1 ? tr("%1: %2, 1 sketch").arg(m_what, text())
                                   : tr("%1: %2, %3 sketches").arg(m_what, text()).arg(m_count));
}

void ChoiceButton::paintEvent(QPaintEvent* /*event*/) {
    const QPalette& colours = palette();
    const auto group = isEnabled() ? QPalette::Active : QPalette::Disabled;
    const bool isChosen = isChecked();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5);
    const bool isHot = isEnabled() && underMouse();
    if (isChosen) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(colours.color(QPalette::Active, QPalette::Highlight));
        painter.drawRoundedRect(box, 5, 5);
    } else if (m_form == Form::Tile || isHot) {
        painter.setPen(isEnabled() ? edgeColour(colours) : colours.color(QPalette::Mid));
        painter.setBrush(colours.color(isHot ? QPalette::Button : QPalette::Base));
        painter.drawRoundedRect(box, 5, 5);
    }
    const QColor ink = isChosen ? colours.color(QPalette::Active, QPalette::HighlightedText)
                                : colours.color(group, QPalette::Text);
    const QColor quiet = isChosen ? ink : colours.color(group, QPalette::PlaceholderText);
    const QString count = QString::number(m_count);
    painter.setPen(ink);
    if (m_form == Form::Tile) {
        QFont strong = font();
        strong.setWeight(QFont::DemiBold);
        painter.setFont(strong);
        painter.drawText(rect().adjusted(0, 3, 0, -height() / 2), Qt::AlignCenter, text());
        painter.setFont(font());
        painter.setPen(quiet);
        painter.drawText(rect().adjusted(0, height() / 2 - 3, 0, -3), Qt::AlignCenter, count);
    } else {
        const QRect line = rect().adjusted(inset, 0, -inset, 0);
        const int countWidth = fontMetrics().horizontalAdvance(count) + inset;
        painter.drawText(
            line, Qt::AlignLeft | Qt::AlignVCenter,
            fontMetrics().elidedText(text(), Qt::ElideMiddle, line.width() - countWidth));
        painter.setPen(quiet);
        painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, count);
    }
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(isChosen ? ink : colours.color(QPalette::Highlight), 2));
        painter.drawRoundedRect(
            box.adjusted(isChosen ? 2 : 0, isChosen ? 2 : 0, isChosen ? -2 : 0, isChosen ? -2 : 0),
            4, 4);
    }
}

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#include "app/library/wall_notice.h"

#include <QVBoxLayout>

namespace matwright::app {

WallNotice::WallNotice(QWidget* parent)
    : QWidget(parent), m_headline(new QLabel), m_sentence(new QLabel) {
    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(10);
    layout->addStretch(2);
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.3);
    large.setWeight(QFont::DemiBold);
    m_headline->setFont(large);
    for (QLabel* label : {m_headline, m_sentence}) {
        label->setAlignment(Qt::AlignCenter);
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
        layout->addWidget(label);
    }
    layout->addStretch(3);
}

void WallNotice::show(const QString& headline, const QString& sentence,
                      const std::vector<Offer>& offers) {
    m_headline->setText(headline);
    m_sentence->setText(sentence);
    const bool hadFocus = isAncestorOf(focusWidget()) && focusWidget()->hasFocus();
    for (QPushButton* button : m_buttons) {
        button->hide();
        button->deleteLater();
    }
    m_buttons.clear();
    auto* column = static_cast<QVBoxLayout*>(layout());
    for (const Offer& offer : offers) {
        auto* button = new QPushButton(offer.text);
        button->setMinimumSize(220, 32);
        connect(button, &QPushButton::clicked, this, [run = offer.run] { run(); });
        column->insertWidget(column->count() - 1, button, 0, Qt::AlignHCenter);
        m_buttons << button;
    }
    if (hadFocus && !m_buttons.isEmpty()) {
        m_buttons.constFirst()->setFocus();
    }
}

}  // namespace matwright::app

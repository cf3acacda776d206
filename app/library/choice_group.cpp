// SPDX-License-Identifier: MIT
#include "app/library/choice_group.h"

#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

namespace matwright::app {

ChoiceGroup::ChoiceGroup(const QString& heading, Form form, QWidget* parent)
    : QWidget(parent),
      m_form(form),
      m_heading(heading),
      m_grid(new QGridLayout),
      m_more(new QToolButton) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(2);
    auto* title = new QLabel(heading);
    QFont strong = title->font();
    strong.setWeight(QFont::DemiBold);
    title->setFont(strong);
    title->setContentsMargins(2, 0, 0, 2);
    layout->addWidget(title);
    m_grid->setContentsMargins({});
    m_grid->setSpacing(form.button == ChoiceButton::Form::Tile ? 4 : 0);
    layout->addLayout(m_grid);
    m_more->setAutoRaise(true);
    m_more->setMinimumHeight(24);
    connect(m_more, &QToolButton::clicked, this, [this] {
        m_showsMore = !m_showsMore;
        layOut();
    });
    layout->addWidget(m_more);
    m_more->hide();
    hide();
}

void ChoiceGroup::setLabels(const QStringList& labels) {
    if (labels == m_labels) {
        return;
    }
    m_labels = labels;
    for (ChoiceButton* button : m_buttons) {
        button->hide();
        button->deleteLater();
    }
    m_buttons.clear();
    for (int i = 0; i < static_cast<int>(labels.size()); ++i) {
        auto* button = new ChoiceButton(m_form.button, m_heading, labels.at(i));
        connect(button, &ChoiceButton::clicked, this, [this, i] { emit toggled(i); });
        m_buttons.push_back(button);
    }
    setVisible(!labels.isEmpty());
    layOut();
}

void ChoiceGroup::layOut() {
    const int all = choices();
    // One or two more are not worth a button.
    const bool hasMore = all > m_form.shownAtFirst + 2;
    const int shown = m_showsMore || !hasMore ? all : m_form.shownAtFirst;
    for (int i = 0; i < all; ++i) {
        ChoiceButton* button = m_buttons[static_cast<std::size_t>(i)];
        m_grid->addWidget(button, i / m_form.columns, i % m_form.columns);
        button->setVisible(i < shown || button->isChecked());
    }
    for (int column = 0; column < m_form.columns; ++column) {
        m_grid->setColumnStretch(column, 1);
    }
    m_more->setVisible(hasMore);
    m_more->setText(m_showsMore ? tr("Fewer") : tr("%1 more…").arg(all - m_form.shownAtFirst));
    m_more->setAccessibleName(tr("%1: %2").arg(m_heading, m_more->text()));
}

void ChoiceGroup::setCounts(const std::vector<std::uint32_t>& counts,
                            const std::function<bool(std::size_t)>& isChosen) {
    for (std::size_t i = 0; i < std::min(counts.size(), m_buttons.size()); ++i) {
        m_buttons[i]->setChecked(isChosen(i));
        m_buttons[i]->setCount(counts[i]);
        if (m_buttons[i]->isChecked()) {
            m_buttons[i]->show();
        }
    }
}

void ChoiceGroup::addBelow(QWidget* widget) {
    layout()->addWidget(widget);
}

}  // namespace matwright::app

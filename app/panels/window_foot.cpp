// SPDX-License-Identifier: MIT
#include "app/panels/window_foot.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QVBoxLayout>

#include "app/panels/section.h"
#include "app/panels/tint.h"

namespace matwright::app {

QPushButton* addButton(QBoxLayout* row, QPushButton* button) {
    button->setMinimumHeight(controlHeight);
    button->setAutoDefault(false);
    row->addWidget(button);
    return button;
}

WindowFoot::WindowFoot(QWidget* parent)
    : QWidget(parent),
      m_problem(new TintedLabel(Tint::Wrong)),
      m_news(new QLabel),
      m_progress(new QProgressBar),
      m_row(new QHBoxLayout) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins({});
    m_problem->setTextFormat(Qt::PlainText);
    m_problem->hide();
    column->addWidget(m_problem);
    m_news->setTextFormat(Qt::PlainText);
    m_news->setWordWrap(true);
    m_row->addWidget(m_news, 1);
    m_progress->setAccessibleName(tr("Progress"));
    m_progress->setTextVisible(true);
    m_progress->hide();
    m_row->addWidget(m_progress, 1);
    column->addLayout(m_row);
}

void WindowFoot::add(std::initializer_list<QPushButton*> buttons) {
    for (QPushButton* button : buttons) {
        addButton(m_row, button)->setMinimumHeight(footControlHeight);
    }
}

void WindowFoot::addBeside(QWidget* control, int stretch) {
    control->setMinimumHeight(footControlHeight);
    m_row->addWidget(control, stretch);
}

void WindowFoot::say(const QString& news, const QString& problem) {
    m_news->setText(news);
    m_problem->setText(problem);
    m_problem->setVisible(!problem.isEmpty());
    if (!news.isEmpty() || !problem.isEmpty()) {
        QAccessibleEvent alert(problem.isEmpty() ? m_news : static_cast<QLabel*>(m_problem),
                               QAccessible::Alert);
        QAccessible::updateAccessibility(&alert);
    }
}

QString WindowFoot::news() const {
    return m_news->text();
}

QString WindowFoot::problem() const {
    return m_problem->text();
}

void WindowFoot::showProgress(int done, int total, const QString& words) {
    m_progress->setRange(0, total);
    m_progress->setValue(done);
    m_progress->setFormat(words);
    m_progress->show();
    m_news->hide();
}

void WindowFoot::hideProgress() {
    m_progress->hide();
    m_news->show();
}

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <functional>
#include <vector>

namespace matwright::app {

// What stands in the place of the wall when there is nothing on it: a sentence, and what can be
// done about it.
class WallNotice final : public QWidget {
    Q_OBJECT

  public:
    struct Offer {
        QString text;
        std::function<void()> run;
    };
    explicit WallNotice(QWidget* parent = nullptr);

    void show(const QString& headline, const QString& sentence, const std::vector<Offer>& offers);
    QString text() const { return m_headline->text() + u'\n' + m_sentence->text(); }
    const QList<QPushButton*>& offers() const { return m_buttons; }

  private:
    QLabel* m_headline;
    QLabel* m_sentence;
    QList<QPushButton*> m_buttons;
};

}  // namespace matwright::app

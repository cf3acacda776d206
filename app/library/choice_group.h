// SPDX-License-Identifier: MIT
#pragma once

#include <QGridLayout>
#include <QStringList>
#include <QToolButton>
#include <QWidget>
#include <cstdint>
#include <functional>
#include <vector>

#include "app/library/choice_button.h"

class QLabel;

namespace matwright::app {

// A heading with the choices of one filter beneath it. Where there are very many, those that leave
// most sketches show at first, and "More" brings the rest.
class ChoiceGroup final : public QWidget {
    Q_OBJECT

  public:
    struct Form {
        ChoiceButton::Form button = ChoiceButton::Form::Row;
        int columns = 1;
        int shownAtFirst = 8;
    };
    ChoiceGroup(const QString& heading, Form form, QWidget* parent = nullptr);

    // Does nothing where they are the same already. Without any, the whole group is hidden.
    void setLabels(const QStringList& labels);
    // One a label.
    void setCounts(const std::vector<std::uint32_t>& counts,
                   const std::function<bool(std::size_t)>& isChosen);
    // Puts a widget beneath the choices.
    void addBelow(QWidget* widget);

    int choices() const { return static_cast<int>(m_buttons.size()); }
    ChoiceButton& button(int choice) { return *m_buttons.at(static_cast<std::size_t>(choice)); }

  signals:
    // The other state is wished for this choice.
    void toggled(int choice);

  private:
    void layOut();

    Form m_form;
    QString m_heading;
    QGridLayout* m_grid;
    QToolButton* m_more;
    QStringList m_labels;
    std::vector<ChoiceButton*> m_buttons;
    bool m_showsMore = false;
};

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractButton>

namespace matwright::app {

// One choice of a filter, with how many sketches it would leave. A choice that would leave none is
// greyed, unless it is chosen: then it can be given up.
class ChoiceButton final : public QAbstractButton {
    Q_OBJECT

  public:
    enum class Form {
        Row,   // the count at the right end
        Tile,  // the count beneath
    };
    // `what` names the filter for those who hear it: "Photos".
    ChoiceButton(Form form, QString what, const QString& label, QWidget* parent = nullptr);

    void setCount(std::uint32_t count);
    std::uint32_t count() const { return m_count; }

    QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void nextCheckState() override {}  // the owner says what is chosen

  private:
    void showUse();

    Form m_form;
    QString m_what;
    std::uint32_t m_count = 0;
};

}  // namespace matwright::app

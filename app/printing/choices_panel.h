// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>
#include <functional>

#include "app/printing/template_choice.h"

class QComboBox;
class QFormLayout;
class QRadioButton;

namespace matwright::app {

class LengthField;

// What can be chosen about a template: in parts or whole, paper, figures, what is drawn.
class ChoicesPanel final : public QWidget {
    Q_OBJECT

  public:
    explicit ChoicesPanel(TemplateChoice choice, QWidget* parent = nullptr);

    const TemplateChoice& choice() const { return m_choice; }

  signals:
    // The paper or how it is used; the drawing stays.
    void paperChanged();
    // What is drawn.
    void lookChanged();

  private:
    QWidget* makeHow();
    void addPaper(QFormLayout* form);
    void addLook(QFormLayout* form);
    void addPart(QFormLayout* form, const QString& text, bool TemplateOptions::* part);
    void changePaper(const std::function<void(TemplateChoice&)>& change);
    void showEnabled();

    TemplateChoice m_choice;
    QRadioButton* m_inParts;
    QRadioButton* m_whole;
    QComboBox* m_sheet;
    LengthField* m_margin;
    LengthField* m_overlap;
    QComboBox* m_scale;
};

}  // namespace matwright::app

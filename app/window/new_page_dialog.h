// SPDX-License-Identifier: MIT
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QPushButton>
#include <optional>

#include "app/panels/length_field.h"
#include "core/sketch/sketch.h"

namespace matwright::app {

// Asks for the page of a new sketch: a size of the catalogue or a custom one, one page or two
// facing ones.
class NewPageDialog final : public QDialog {
    Q_OBJECT

  public:
    NewPageDialog(Scale scale, QWidget* parent);

    // The page as chosen, or the sentence that says why it cannot be.
    Result<PageSetup> page() const;

  private:
    bool isCustom() const;
    void showSize();
    void showFault();

    QComboBox* m_sizes;
    LengthField* m_width;
    LengthField* m_height;
    QCheckBox* m_double;
    QLabel* m_fault;
    QPushButton* m_create = nullptr;
};

// A page of this size with 1/2 in margins, narrower where the page is small, and a 1/4 in gutter.
PageSetup pageOf(Size size, bool doublePage);

}  // namespace matwright::app

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
// facing ones. Where the size is not at home in the scale, the other units are offered with it.
class NewPageDialog final : public QDialog {
    Q_OBJECT

  public:
    NewPageDialog(Scale scale, QWidget* parent);

    // The page as chosen, or the sentence that says why it cannot be.
    // In millimetres its margins and gutter are whole ones.
    Result<PageSetup> page() const;
    // The scale to go on in: the one given, or the usual one of the other unit.
    Scale scale() const;

  private:
    bool isCustom() const;
    void showSize();
    void offerUnits();
    void showScale();
    void showFault();

    const Scale m_scale;

    QComboBox* m_sizes;
    LengthField* m_width;
    LengthField* m_height;
    QCheckBox* m_double;
    QCheckBox* m_otherUnits;
    QLabel* m_fault;
    QPushButton* m_create = nullptr;
};

// A page of this size with 1/2 in margins, narrower where the page is small, and a 1/4 in gutter.
PageSetup pageOf(Size size, bool doublePage);

}  // namespace matwright::app

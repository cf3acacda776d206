// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>
#include <array>

#include "core/printers/printer.h"

class QCheckBox;
class QComboBox;
class QLineEdit;
class QSpinBox;

namespace matwright::app {

class LengthField;
class Section;

// One photo paper of a printer, to be changed. Says every change at once; what is shown stays until
// show() says otherwise.
class PaperPanel final : public QWidget {
    Q_OBJECT

  public:
    explicit PaperPanel(Scale scale, QWidget* parent = nullptr);

    // Emits nothing.
    void show(const PrinterPaper& paper);
    const PrinterPaper& paper() const { return m_paper; }
    QLineEdit& name() { return *m_name; }

  signals:
    void changed(const matwright::PrinterPaper& paper);

  private:
    void addSize(Scale scale);
    void addMargins(Scale scale);
    void addStock();
    void takeSize(Size size);
    template <typename Change>
    void edit(Change change);
    void refresh();

    PrinterPaper m_paper;
    bool m_showing = false;
    Section* m_section;
    QLineEdit* m_name;
    QComboBox* m_catalogue;
    LengthField* m_width;
    LengthField* m_height;
    QComboBox* m_borders;
    std::array<LengthField*, 4> m_margins{};
    QSpinBox* m_price;
    QCheckBox* m_counted;
    QSpinBox* m_atHand;
};

}  // namespace matwright::app

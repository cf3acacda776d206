// SPDX-License-Identifier: MIT
#pragma once

#include <QTimer>
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

// One photo paper of a printer, to be changed. Says every change at once, but the steps of a field
// (arrow keys, wheel) when they have rested or the field is left; what is shown stays until show()
// says otherwise. Another size is taken as resized() does it.
class PaperPanel final : public QWidget {
    Q_OBJECT

  public:
    explicit PaperPanel(Scale scale, QWidget* parent = nullptr);

    // Emits nothing.
    void show(const PrinterPaper& paper);
    const PrinterPaper& paper() const { return m_paper; }
    QLineEdit& name() { return *m_name; }
    // For tests.
    LengthField& width() { return *m_width; }
    LengthField& height() { return *m_height; }

  public slots:
    // The paper lies where it stood.
    void turn();

  signals:
    void changed(const matwright::PrinterPaper& paper);

  private:
    void addSize();
    void addMargins(Scale scale);
    void addStock();
    // A gesture other than 0 goes on, see LengthField.
    template <typename Change>
    void edit(Change change, int gesture = 0);
    void takeWanted();
    void refresh();

    PrinterPaper m_paper;
    PrinterPaper m_wanted;  // with the steps that have not rested yet
    QTimer m_soon;
    bool m_showing = false;
    Section* m_section;
    QLineEdit* m_name;
    QComboBox* m_catalogue;
    LengthField* m_width;
    LengthField* m_height;
    QComboBox* m_borders;
    std::array<LengthField*, 4> m_margins{};
    std::array<QWidget*, 2> m_marginPairs{};  // left and right, top and bottom
    QSpinBox* m_price;
    QCheckBox* m_counted;
    QSpinBox* m_atHand;
};

}  // namespace matwright::app

// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>

#include "app/panels/length_field.h"

namespace matwright::app {

// Shows a bar on the screen and asks how long a ruler says it is.
class ScreenDialog final : public QDialog {
    Q_OBJECT

  public:
    // `current`: measured before, or 0. The system's own figure is `systemPpi`.
    ScreenDialog(double current, double systemPpi, Scale scale, QWidget* parent);

    // Logical pixels per inch; 0 where the system's figure shall be used.
    double ppi() const;

    static constexpr int barPixels = 400;

  private:
    LengthField* m_length;
    bool m_useSystem = false;
    double m_ppi = 0;
    Length m_proposed;
};

}  // namespace matwright::app

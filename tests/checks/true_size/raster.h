// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <optional>

#include "tests/checks/true_size/expected_lines.h"

namespace matwright::check {

inline constexpr double resolution = 600;  // pixels per inch

// A grey picture of a sheet at `resolution`, its top left corner the sheet's.
class Raster {
  public:
    explicit Raster(const QImage& picture)
        : m_grey(picture.convertToFormat(QImage::Format_Grayscale8)) {}

    bool isNull() const { return m_grey.isNull(); }

    // How far across the sample the middle of the dark line lies, in mm; nothing where there is no
    // line within `reach` (a dash's gap, or the line is missing).
    std::optional<double> lineOffset(const Sample& sample, double reach) const;

  private:
    double darkness(double xMillimetres, double yMillimetres) const;

    QImage m_grey;
};

}  // namespace matwright::check

// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>

namespace matwright::test {

// Relative luminance (0 to 1) and contrast ratio (1 to 21) of opaque colours as WCAG 2.2 defines
// them, with the sRGB threshold of 0.04045.
double luminance(const QColor& colour);
double contrast(const QColor& a, const QColor& b);

}  // namespace matwright::test

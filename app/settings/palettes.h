// SPDX-License-Identifier: MIT
#pragma once

#include <QPalette>

namespace matwright::app {

// The program's own colours: paper and ink with a teal accent. In both palettes every text colour
// stands at least 4.5:1 against each background it may lie on (WCAG 2.2, 1.4.3), greyed-out text
// at least 3:1, and the accent that marks the focus at least 3:1 (1.4.11).
QPalette lightPalette();
QPalette darkPalette();

// The line around fields and boxes: at least 3:1 against window and field (WCAG 2.2, 1.4.11).
QColor edgeColour(const QPalette& palette);

// Whether the palette has light text on a dark ground.
bool isDark(const QPalette& palette);

}  // namespace matwright::app

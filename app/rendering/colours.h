// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>

#include "core/drawing/drawing.h"

namespace matwright::app {

inline QColor toColor(Colour colour) {
    return {colour.red, colour.green, colour.blue};
}

inline Colour toColour(const QColor& colour) {
    return {static_cast<std::uint8_t>(colour.red()), static_cast<std::uint8_t>(colour.green()),
            static_cast<std::uint8_t>(colour.blue())};
}

}  // namespace matwright::app
